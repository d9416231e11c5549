uniform float pixelRatio; // device pixels for one CSS pixel

in float vAcross;
in float vWidth;
in vec4 vColour;

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

void main() {
  float cover = clamp((0.5 * vWidth - abs(vAcross)) * pixelRatio + 0.5, 0.0, 1.0) * vColour.a;
  colour = vec4(vColour.rgb * cover, cover);
}
