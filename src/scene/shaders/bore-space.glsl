// Bore space: mm, y along the axis with the deck at y = +length/2, 0° toward +z, angles clockwise seen
// from the deck (looking down −y), so that 90° lies toward −x.

const float PI = 3.141592653589793;

uniform float middleMm;     // diameter that is drawn as it is, mm
uniform float lengthMm;     // length of the bore, mm
uniform float exaggeration; // drawn deviation over true deviation, no unit
uniform float rowShift;     // how far to the right of the middle a bore of a row stands, half widths of the picture

// Outward unit vector of bore space at an angle in rad. GLSL's sine is only good to 2⁻¹¹ on some machines:
// good enough for lines and discs; the wall has its own from the grid.
vec3 outwardAt(float angle) {
  return vec3(-sin(angle), 0.0, cos(angle));
}

// Drawn radius, mm, of a deviation on the diameter in µm.
float drawnRadius(float deviationUm) {
  return 0.5 * (middleMm + exaggeration * deviationUm * 0.001);
}

// Drawn place in bore space, mm. Outward unit vector, depth below the deck in mm, deviation on the diameter in µm.
vec3 drawnPlace(vec3 outward, float depthMm, float deviationUm) {
  return outward * drawnRadius(deviationUm) + vec3(0.0, 0.5 * lengthMm - depthMm, 0.0);
}

// A place of clip space moved to where its bore stands in the row: seen as from straight before it, every bore
// of a row is drawn alike, and none leans.
vec4 inRow(vec4 clip) {
  return clip + vec4(rowShift * clip.w, 0.0, 0.0, 0.0);
}
