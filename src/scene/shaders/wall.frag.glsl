// Colours the wall. The same grid is drawn up to three times, and `wallPass` says which: with BackSide
// culling gl_FrontFacing cannot be trusted to tell the far wall from the near one.

uniform int wallPass; // 0 far wall, 1 near wall (glass), 2 proven patches of the far wall once more, on top

uniform vec2 rampUm;      // deviations at the two ends of the ramp, µm
uniform vec3 ramp[9];     // sRGB as written, from tight to loose
uniform vec2 limitsUm;    // min and max as deviations, µm; ±1e6 where there is none
uniform bool minJudged;   // false: the min is only drawn
uniform bool fadesBetween; // false: on its way between walls drawn at random, none of them a survey's
uniform bool isDifference; // of two walls: no limits, only a doubt about none, the outer doubt edges
uniform float isoStepUm;  // step of the iso-lines on the diameter, µm; 0 for none
uniform vec2 isoLine;     // x width in CSS pixels, y cover 0…1
uniform float hatchPx;    // between lines of the hatch, CSS pixels, as near as its powers of two come
uniform float pointedMm;  // depth pointed at, mm; below 0 for none
uniform vec3 tightColour; // sRGB as written, below the min
uniform vec3 looseColour; // sRGB as written, above the max
uniform vec3 paperColour; // sRGB as written, pale ground of hatched wall
uniform vec3 inkColour;   // sRGB as written, lines on the wall
uniform vec3 glassColour; // sRGB as written, lines of the near wall, seen against the page

uniform mat4 modelViewMatrix; // bore space → view space

in vec2 vNode;          // node coordinate
in vec2 vAngleAndDepth; // rad, mm
in vec3 vToEye;         // view space, from the wall to the eye, mm
in vec3 vNormal;        // bore space, outward, not of unit length; of the near wall only

layout(location = 0) out vec4 colour; // sRGB as written, premultiplied

const float portEdgePx = 1.8;

// What every fragment of the wall knows of its place, with how fast each changes per device pixel. Gathered
// before any branch that differs between pixels, since derivatives need all of them.
struct Spot {
  float deviation;           // µm
  vec2 place;                // mm on the unrolled wall: arc, depth
  float hole, holeSlope;     // mm to the nearest port edge, negative inside
  float edge, edgeSlope;     // rows from the nearer mouth
  float facing, facingSlope; // cosine between the outward normal and the direction to the eye
  float pointed, pointedSlope; // mm from the level pointed at
};

// What the far wall is marked by.
struct Judged {
  vec2 placeSlope;      // mm per device pixel, of each
  mat2 toScreen;        // device pixels per mm of the unrolled wall
  float deviationSlope; // µm per device pixel
  vec2 steepest;        // µm per mm of the unrolled wall
  vec4 edges;           // doubt edges, µm
  float pastMax, pastMaxSlope, pastMin, pastMinSlope; // µm past the firm edges, positive when proven
  float hatchSlope;     // of (arc + depth) / circumference, per device pixel
  bool hatched, nearProvenAbove, nearProvenBelow;
};

// Colour of the ramp at a deviation in µm, sRGB as written.
vec3 rampColour(float deviation) {
  float at = clamp((deviation - rampUm.x) / (rampUm.y - rampUm.x), 0.0, 1.0) * 8.0;
  int first = min(int(at), 7);
  return mix(ramp[first], ramp[first + 1], at - float(first));
}

// Whether a cell has a corner with this flag of proof.
bool cornerProven(Corners corners, float flag) {
  vec4 flags = vec4(corners.upperFirst.z, corners.upperNext.z, corners.lowerFirst.z, corners.lowerNext.z);
  return any(equal(flags, vec4(flag)));
}

// Outward normal of the drawn wall in bore space, not of unit length, with the slopes of the cell.
vec3 normalIn(Cell cell, Corners corners, float deviation) {
  vec4 span = spanOf(cell);
  vec4 radii = vec4(
    drawnRadius(corners.upperFirst.x),
    drawnRadius(corners.upperNext.x),
    drawnRadius(corners.lowerFirst.x),
    drawnRadius(corners.lowerNext.x)
  );
  float alongAngle = mix(radii.y - radii.x, radii.w - radii.z, cell.share.y) / (span.y - span.x);
  float alongDepth = mix(radii.z - radii.x, radii.w - radii.y, cell.share.x) / (span.w - span.z);
  vec3 outward = outwardAt(vAngleAndDepth.x);
  vec3 around = vec3(-outward.z, 0.0, outward.x);
  return outward - around * (alongAngle / max(drawnRadius(deviation), 1e-3)) + vec3(0.0, alongDepth, 0.0);
}

Spot spotIn(Cell cell, Corners corners) {
  Spot spot;
  spot.deviation = mixed(corners, cell).x;
  spot.place = vec2(vAngleAndDepth.x * 0.5 * middleMm, vAngleAndDepth.y);
  spot.hole = portDistance(vAngleAndDepth.x, vAngleAndDepth.y);
  spot.holeSlope = slopeOf(spot.hole);
  spot.edge = min(vNode.y, float(gridSize.y - 1) - vNode.y);
  spot.edgeSlope = slopeOf(vNode.y);
  vec3 normal = wallPass == 1 ? vNormal : normalIn(cell, corners, spot.deviation);
  spot.facing = dot(normalize(mat3(modelViewMatrix) * normal), normalize(vToEye));
  spot.facingSlope = slopeOf(spot.facing);
  spot.pointed = spot.place.y - pointedMm;
  spot.pointedSlope = slopeOf(spot.place.y);
  return spot;
}

Judged judgedIn(Cell cell, Corners corners, Spot spot) {
  Judged judged;
  judged.placeSlope = vec2(slopeOf(spot.place.x), spot.pointedSlope);
  judged.toScreen = toScreenFrom(spot.place);
  judged.deviationSlope = slopeOf(spot.deviation);
  judged.steepest = transpose(judged.toScreen) * vec2(dFdx(spot.deviation), dFdy(spot.deviation));
  judged.edges = mixed(cornersIn(doubtTexture, cell), cell);
  judged.pastMax = spot.deviation - judged.edges.w;
  judged.pastMaxSlope = slopeOf(judged.pastMax);
  judged.pastMin = judged.edges.x - spot.deviation;
  judged.pastMinSlope = slopeOf(judged.pastMin);
  judged.hatchSlope = slopeOf((spot.place.x + spot.place.y) / (PI * middleMm));
  judged.hatched = corners.upperFirst.y > 0.0;
  judged.nearProvenAbove = cornerProven(corners, 1.0);
  judged.nearProvenBelow = cornerProven(corners, 2.0);
  return judged;
}

// Lays a colour over another with a cover 0…1.
vec3 over(vec3 under, vec3 top, float cover) {
  return mix(under, top, cover);
}

// Wall that nobody measured: a faint trace of the drawn shape under the hatch, and nothing else.
vec3 hatchedWall(Spot spot, Judged judged, vec3 ground) {
  vec3 faint = mix(ground, paperColour, 0.62);
  return over(faint, inkColour, 0.42 * hatchAt(spot.place, PI * middleMm, judged.hatchSlope, hatchPx));
}

// Dots where a limit is too close to call, and the dashed crossing of that limit.
vec3 doubtMarks(Spot spot, Judged judged, vec3 ground) {
  vec2 pitch = pitchesOf(PI * middleMm, judged.placeSlope, 7.5);
  float dots = dotsAt(spot.place, pitch, judged.toScreen, 1.05);
  float dash = dashAt(spot.place, 2.0 * pitch, judged.steepest);
  bool atMax = spot.deviation > judged.edges.z;
  bool atMin = minJudged && spot.deviation < judged.edges.y;
  vec3 result = over(ground, looseColour, atMax ? 0.9 * dots : 0.0);
  result = over(result, tightColour, atMin ? 0.9 * dots : 0.0);
  float maxLine = lineAt(spot.deviation - limitsUm.y, judged.deviationSlope, 1.8);
  float minLine = minJudged ? lineAt(spot.deviation - limitsUm.x, judged.deviationSlope, 1.8) : 0.0;
  return over(result, inkColour, dash * max(maxLine, minLine));
}

// Dots where a difference may be none.
vec3 withinDoubt(Judged judged, Spot spot, vec3 ground, float standsOut) {
  vec2 pitch = pitchesOf(PI * middleMm, judged.placeSlope, 7.5);
  return over(ground, inkColour, 0.7 * (1.0 - standsOut) * dotsAt(spot.place, pitch, judged.toScreen, 1.05));
}

// Measured wall: ramp, iso-lines, doubt; strong colour and a firm border where proven.
vec3 measuredWall(Spot spot, Judged judged, vec3 ground, out float patchCover) {
  float iso = isoStepUm > 0.0 ? linesAt(spot.deviation / isoStepUm, judged.deviationSlope / isoStepUm, isoLine.x) : 0.0;
  float above = judged.nearProvenAbove ? clamp(0.5 + judged.pastMax / judged.pastMaxSlope, 0.0, 1.0) : 0.0;
  float below = judged.nearProvenBelow ? clamp(0.5 + judged.pastMin / judged.pastMinSlope, 0.0, 1.0) : 0.0;
  float border = max(
    judged.nearProvenAbove ? lineAt(judged.pastMax, judged.pastMaxSlope, 2.2) : 0.0,
    judged.nearProvenBelow ? lineAt(judged.pastMin, judged.pastMinSlope, 2.2) : 0.0
  );
  vec3 lined = over(ground, inkColour, isoLine.y * iso);
  patchCover = 0.0;
  if (isBetween()) return lined;
  if (isDifference) {
    patchCover = border;
    return over(withinDoubt(judged, spot, lined, max(above, below)), inkColour, border);
  }
  vec3 open = doubtMarks(spot, judged, lined);
  vec3 strong = over(above > below ? looseColour : tightColour, paperColour, 0.22 * iso);
  patchCover = max(max(above, below), border);
  return over(over(open, strong, max(above, below)), inkColour, border);
}

// How much of the wall is left to see: it fades between surveys, and comes back within a tenth of the way.
float presence() {
  if (!fadesBetween) return 1.0;
  return 1.0 - 0.5 * smoothstep(0.0, 0.1, min(wallShare, 1.0 - wallShare));
}

void farWall(Spot spot, Judged judged) {
  float inWall = clamp(0.5 + spot.hole / spot.holeSlope, 0.0, 1.0);
  if (inWall <= 0.0) discard;
  float shade = mix(0.88, 1.0, smoothstep(0.0, 0.7, abs(spot.facing)));
  vec3 ground = rampColour(spot.deviation) * shade;
  float patchCover = 0.0;
  vec3 result =
    judged.hatched ? hatchedWall(spot, judged, ground) : measuredWall(spot, judged, ground, patchCover);
  if (wallPass == 2 && patchCover <= 0.0) discard;
  if (pointedMm >= 0.0) result = over(result, inkColour, 0.8 * lineAt(spot.pointed, spot.pointedSlope, 1.0));
  float portEdge = clamp(portEdgePx * pixelRatio + 0.5 - spot.hole / spot.holeSlope, 0.0, 1.0);
  float rim = lineAt(spot.edge, spot.edgeSlope, 2.0);
  result = over(result, inkColour, 0.85 * max(portEdge, 0.7 * rim));
  float cover = (wallPass == 2 ? patchCover * inWall : inWall) * presence();
  colour = vec4(result * cover, cover);
}

void nearWall(Spot spot) {
  bool inPort = spot.hole < 0.0;
  float outline = 0.5 * lineAt(spot.hole, spot.holeSlope, 1.2);
  float rim = max(lineAt(spot.edge, spot.edgeSlope, 2.4), lineAt(spot.facing, spot.facingSlope, 3.2));
  float level = pointedMm >= 0.0 && !inPort ? 0.5 * lineAt(spot.pointed, spot.pointedSlope, 1.0) : 0.0;
  float glass = inPort ? 0.0 : 0.03;
  float cover = max(max(outline, level), max(glass, inPort ? 0.0 : 0.55 * rim));
  if (cover <= 0.0) discard;
  colour = vec4(glassColour * cover, cover);
}

void main() {
  Cell cell = cellAt(vNode);
  Corners corners = wallCornersIn(cell);
  Spot spot = spotIn(cell, corners);
  if (wallPass == 1) nearWall(spot);
  else farWall(spot, judgedIn(cell, corners, spot));
}
