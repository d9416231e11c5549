uniform float pixelRatio; // device pixels for one CSS pixel
uniform vec3 discColour;  // sRGB as written
uniform vec3 rimColour;   // sRGB as written

in float vShape;
in float vOpacity;

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

// Cover of a disc: away and radius in CSS pixels.
float discAt(float away, float radius) {
  return clamp((radius - away) * pixelRatio + 0.5, 0.0, 1.0);
}

void main() {
  float size = vShape > 1.5 ? 19.0 : 10.0;
  float away = length(gl_PointCoord - 0.5) * size;
  float outer = vShape > 1.5 ? 8.0 : 3.0;
  float ink = discAt(away, outer);
  if (vShape > 1.5) ink -= discAt(away, outer - 1.8);
  else if (vShape > 0.5) ink -= discAt(away, outer - 1.3);
  float rim = discAt(away, outer + 1.0) - (vShape > 1.5 ? discAt(away, outer - 2.8) : 0.0);
  float cover = max(rim * 0.8, ink) * vOpacity;
  if (cover <= 0.0) discard;
  colour = vec4(mix(rimColour, discColour, ink) * cover, cover);
}
