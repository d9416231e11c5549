// Displaces the unit grid: its vertices are nodes of the wall's grid, and the seam once more.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space

in vec2 node; // column 0 … columns, row 0 … rows − 1, whole numbers

out vec2 vNode;          // node coordinate
out vec2 vAngleAndDepth; // rad, mm
out vec3 vPlace;         // bore space, mm
out vec3 vToEye;         // view space, from the wall to the eye, mm

void main() {
  ivec2 at = ivec2(node);
  vec4 column = texelFetch(gridTexture, ivec2(at.x, 0), 0);
  float depthMm = texelFetch(gridTexture, ivec2(at.y, 1), 0).x;
  float deviation = texelFetch(wallTexture, ivec2(at.x % gridSize.x, at.y), 0).x;
  vNode = node;
  vAngleAndDepth = vec2(column.x, depthMm);
  vPlace = drawnPlace(vec3(column.y, 0.0, column.z), depthMm, deviation);
  vec4 inView = modelViewMatrix * vec4(vPlace, 1.0);
  vToEye = -inView.xyz;
  gl_Position = projectionMatrix * inView;
}
