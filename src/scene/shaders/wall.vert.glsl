// Displaces the unit grid: its vertices are nodes of the wall's grid, and the seam once more.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space
uniform int wallPass;          // 0 far wall, 1 near wall, 2 proven patches

in vec2 node; // column 0 … columns, row 0 … rows − 1, whole numbers

out vec2 vNode;          // node coordinate
out vec2 vAngleAndDepth; // rad, mm
out vec3 vPlace;         // bore space, mm
out vec3 vToEye;         // view space, from the wall to the eye, mm
out vec3 vNormal;        // bore space, outward, not of unit length; of the near wall only, for its silhouette

// Drawn radius at a node, mm.
float radiusAtNode(ivec2 at) {
  return drawnRadius(nodeAt(ivec2(at.x % gridSize.x, at.y)).x);
}

// Outward normal of the drawn wall from the nodes on all sides, so that it has no steps at levels and axes.
vec3 normalAtNode(ivec2 at, vec3 outward, float radius) {
  ivec2 rows = clamp(ivec2(at.y - 1, at.y + 1), ivec2(0), ivec2(gridSize.y - 1));
  ivec2 columns = clamp(ivec2(at.x - 1, at.x + 1), ivec2(0), ivec2(gridSize.x));
  float depths = texelFetch(gridTexture, ivec2(rows.y, 1), 0).x - texelFetch(gridTexture, ivec2(rows.x, 1), 0).x;
  float angles = texelFetch(gridTexture, ivec2(columns.y, 0), 0).x - texelFetch(gridTexture, ivec2(columns.x, 0), 0).x;
  float alongDepth = (radiusAtNode(ivec2(at.x, rows.y)) - radiusAtNode(ivec2(at.x, rows.x))) / depths;
  float alongAngle = (radiusAtNode(ivec2(columns.y, at.y)) - radiusAtNode(ivec2(columns.x, at.y))) / angles;
  vec3 around = vec3(-outward.z, 0.0, outward.x);
  return outward - around * (alongAngle / max(radius, 1e-3)) + vec3(0.0, alongDepth, 0.0);
}

void main() {
  ivec2 at = ivec2(node);
  vec4 column = texelFetch(gridTexture, ivec2(at.x, 0), 0);
  float depthMm = texelFetch(gridTexture, ivec2(at.y, 1), 0).x;
  float deviation = nodeAt(ivec2(at.x % gridSize.x, at.y)).x;
  vec3 outward = vec3(column.y, 0.0, column.z);
  vNode = node;
  vAngleAndDepth = vec2(column.x, depthMm);
  vPlace = drawnPlace(outward, depthMm, deviation);
  vNormal = wallPass == 1 ? normalAtNode(at, outward, drawnRadius(deviation)) : outward;
  vec4 inView = modelViewMatrix * vec4(vPlace, 1.0);
  vToEye = -inView.xyz;
  gl_Position = inRow(projectionMatrix * inView);
}
