// Stations as discs of a constant size on the screen, both contacts of each.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space
uniform float pixelRatio;      // device pixels for one CSS pixel
uniform float nearOpacity;     // opacity of discs on the near wall

in vec3 here;   // angle rad, depth mm, deviation on the diameter µm
in float shape; // 0 disc, 1 hollow disc (in no verdict), 2 ring round the place pointed at

out float vShape;
out float vOpacity;

void main() {
  vec4 inView = modelViewMatrix * vec4(drawnPlace(outwardAt(here.x), here.y, here.z), 1.0);
  float towardEye = dot(mat3(modelViewMatrix) * outwardAt(here.x), normalize(-inView.xyz));
  vShape = shape;
  vOpacity = mix(1.0, nearOpacity, smoothstep(-0.05, 0.05, towardEye));
  gl_Position = projectionMatrix * inView;
  gl_Position.z -= 4e-4 * gl_Position.w;
  gl_PointSize = (shape > 1.5 ? 19.0 : 10.0) * pixelRatio;
}
