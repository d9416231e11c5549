// Stations as discs of a constant size on the screen, both contacts of each.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space
uniform float pixelRatio;      // device pixels for one CSS pixel
uniform vec2 viewport;         // CSS pixels
uniform float nearOpacity;     // opacity of discs on the near wall

in vec3 here;   // angle rad, depth mm, deviation on the diameter µm
in float shape; // 0 disc, 1 hollow disc (in no verdict), 2 ring round the place pointed at, 3 square: next

out float vShape;
out float vOpacity;

const float discPx = 10.0;

void main() {
  vec4 inView = modelViewMatrix * vec4(drawnPlace(outwardAt(here.x), here.y, here.z), 1.0);
  float towardEye = dot(mat3(modelViewMatrix) * outwardAt(here.x), normalize(-inView.xyz));
  vShape = shape;
  vOpacity = mix(1.0, nearOpacity, smoothstep(-0.05, 0.05, towardEye));
  gl_Position = inRow(projectionMatrix * inView);
  // Faces the eye while the wall behind it is steep: as near as a disc is wide, or the wall would cut it.
  float away = length(inView.xyz);
  float pixelMm = 2.0 * away / (projectionMatrix[1][1] * viewport.y);
  vec4 nearer = projectionMatrix * vec4(inView.xyz * (1.0 - discPx * pixelMm / away), 1.0);
  gl_Position.z = nearer.z / nearer.w * gl_Position.w;
  gl_PointSize = (shape > 1.5 ? 19.0 : discPx) * pixelRatio;
}
