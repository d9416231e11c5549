// Hatch, dots and dashes: their sizes are screen pixels by derivatives, their places are anchored to a
// surface. `place` is mm on that surface, x around. Pitches are the circumference over powers of two, so that
// no seam shows, and each finer mark falls between those of the coarser one: they stand still while zooming.

uniform float pixelRatio; // device pixels for one CSS pixel

// How fast a value changes on the screen, per device pixel.
float slopeOf(float value) {
  return max(length(vec2(dFdx(value), dFdy(value))), 1e-12);
}

// Marks for each unit of a value whose `slope` is per device pixel, so that they lie about `pixels` CSS
// pixels apart: a power of two, at least 1.
float marksPerUnit(float slope, float pixels) {
  return exp2(max(0.0, round(-log2(slope * pixels * pixelRatio))));
}

// Cover 0…1 of a line `width` CSS pixels wide along value = 0; `slope` from slopeOf.
float lineAt(float value, float slope, float width) {
  return clamp(0.5 * width * pixelRatio + 0.5 - abs(value) / slope, 0.0, 1.0);
}

// Cover of lines along every whole value; fades to a mean tone where they run closer than 3 CSS pixels.
float linesAt(float value, float slope, float width) {
  float apart = 1.0 / slope;
  float cover = lineAt(0.5 - abs(fract(value) - 0.5), slope, width);
  float mean = min(0.35, width * pixelRatio / apart);
  return mix(mean, cover, clamp((apart / pixelRatio - 3.0) / 2.0, 0.0, 1.0));
}

// Cover of 45° hatching, lines about `pixels` CSS pixels apart. `slope` is that of (x + y) / circumference.
float hatchAt(vec2 place, float circumference, float slope, float pixels) {
  float marks = marksPerUnit(slope, pixels);
  return linesAt((place.x + place.y) / circumference * marks, slope * marks, 0.95);
}

// Device pixels per mm of the surface, as a matrix: screen step = toScreen · step on the surface.
mat2 toScreenFrom(vec2 place) {
  mat2 surfacePerPixel = mat2(dFdx(place), dFdy(place));
  float area = determinant(surfacePerPixel);
  return abs(area) < 1e-12 ? mat2(0.0) : inverse(surfacePerPixel);
}

// Pitch around and along, mm, at which marks lie about `pixels` CSS pixels apart; slopes of place per pixel.
vec2 pitchesOf(float circumference, vec2 placeSlope, float pixels) {
  vec2 slope = placeSlope / circumference;
  return circumference / vec2(marksPerUnit(slope.x, pixels), marksPerUnit(slope.y, pixels));
}

// Cover of round dots, `radius` CSS pixels, on two interleaved lattices of the given pitches in mm.
float dotsAt(vec2 place, vec2 pitch, mat2 toScreen, float radius) {
  vec2 even = place - pitch * round(place / pitch);
  vec2 odd = place - pitch * (floor(place / pitch) + 0.5);
  float away = min(length(toScreen * even), length(toScreen * odd));
  return clamp(radius * pixelRatio + 0.5 - away, 0.0, 1.0);
}

// 1 in the drawn part of a dash, 0 in its gap, along whichever direction the line runs. `steepest` is the
// direction on the surface in which the line's value changes.
float dashAt(vec2 place, vec2 pitch, vec2 steepest) {
  float along = abs(steepest.x) > abs(steepest.y) ? place.y / pitch.y : place.x / pitch.x;
  return step(fract(along), 0.6);
}
