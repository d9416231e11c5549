uniform float pixelRatio; // device pixels for one CSS pixel
uniform vec3 discColour;  // sRGB as written
uniform vec3 rimColour;   // sRGB as written

in float vShape;
in float vOpacity;

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

// Cover of a disc, or of a square where distance is counted along the sides: away and radius in CSS pixels.
float discAt(float away, float radius) {
  return clamp((radius - away) * pixelRatio + 0.5, 0.0, 1.0);
}

void main() {
  float size = vShape > 1.5 ? 19.0 : 10.0;
  vec2 off = abs(gl_PointCoord - 0.5) * size;
  float away = vShape > 2.5 ? max(off.x, off.y) : length(off);
  float outer = vShape > 2.5 ? 6.5 : vShape > 1.5 ? 8.0 : 3.0;
  float ink = discAt(away, outer);
  if (vShape > 1.5) ink -= discAt(away, outer - 1.8);
  else if (vShape > 0.5) ink -= discAt(away, outer - 1.3);
  float rim = discAt(away, outer + 1.0) - (vShape > 1.5 ? discAt(away, outer - 2.8) : 0.0);
  float cover = max(rim * 0.8, ink) * vOpacity;
  if (cover <= 0.0) discard;
  colour = vec4(mix(rimColour, discColour, ink) * cover, cover);
}
