// The outer limit as a cylinder.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space
uniform float shellUm;         // deviation of the limit on the diameter, µm

in vec2 share; // shares of the full turn and of the length

out vec2 vAngleAndDepth; // rad, mm

void main() {
  vAngleAndDepth = share * vec2(2.0 * PI, lengthMm);
  vec3 place = drawnPlace(outwardAt(vAngleAndDepth.x), vAngleAndDepth.y, shellUm);
  gl_Position = inRow(projectionMatrix * (modelViewMatrix * vec4(place, 1.0)));
}
