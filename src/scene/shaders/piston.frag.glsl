uniform vec4 pistonColour; // sRGB as written and opacity

in float vTowardEye;

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

void main() {
  // Denser toward the silhouette, so that the round of it shows.
  float cover = pistonColour.a * mix(1.9, 0.7, clamp(abs(vTowardEye), 0.0, 1.0));
  colour = vec4(pistonColour.rgb * cover, cover);
}
