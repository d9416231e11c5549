uniform vec4 shellColour; // sRGB as written and opacity

in vec2 vAngleAndDepth; // rad, mm

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

void main() {
  float hole = portDistance(vAngleAndDepth.x, vAngleAndDepth.y);
  float slope = max(length(vec2(dFdx(hole), dFdy(hole))), 1e-6);
  float cover = clamp(0.5 + hole / slope, 0.0, 1.0) * shellColour.a;
  colour = vec4(shellColour.rgb * cover, cover);
}
