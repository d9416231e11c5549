// The doubt of a limit as a flat ring in the plane of a mouth, between the doubt edges of the nearest station.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space
uniform vec3 bandColours[2];   // sRGB as written: min, max

in vec4 band; // x column, y mouth (0 deck, 1 bottom), z limit (0 min, 1 max), w edge (0 inner, 1 outer)

out vec2 vPlace; // mm in the plane of the mouth: arc at the middle diameter, radius
out vec3 vColour;

void main() {
  int column = int(band.x);
  ivec2 texel = ivec2(column % gridSize.x, band.y < 0.5 ? 0 : gridSize.y - 1);
  vec4 edges = texelFetch(doubtTexture, texel, 0);
  vec2 pair = band.z < 0.5 ? edges.xy : edges.zw;
  bool unknown = any(greaterThan(abs(pair), vec2(1e5)));
  float deviation = unknown ? 0.0 : mix(pair.x, pair.y, band.w);
  vec4 around = texelFetch(gridTexture, ivec2(column, 0), 0);
  vPlace = vec2(around.x * 0.5 * middleMm, drawnRadius(deviation));
  vColour = bandColours[int(band.z)];
  vec3 place = drawnPlace(vec3(around.y, 0.0, around.z), band.y * lengthMm, deviation);
  gl_Position = inRow(projectionMatrix * (modelViewMatrix * vec4(place, 1.0)));
}
