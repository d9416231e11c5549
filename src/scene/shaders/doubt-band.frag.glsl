in vec2 vPlace; // mm in the plane of the mouth: arc at the middle diameter, radius
in vec3 vColour;

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

void main() {
  vec2 slope = vec2(slopeOf(vPlace.x), slopeOf(vPlace.y));
  float dots = dotsAt(vPlace, pitchesOf(PI * middleMm, slope, 4.5), toScreenFrom(vPlace), 0.7);
  float cover = max(0.05, 0.55 * dots);
  colour = vec4(vColour * cover, cover);
}
