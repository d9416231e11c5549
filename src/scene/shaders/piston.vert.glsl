// The skirt of a piston, through sizes at some heights.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space

in vec3 place; // angle rad, depth mm, deviation on the diameter µm

out float vTowardEye; // cosine between the outward direction and that to the eye

void main() {
  vec3 outward = outwardAt(place.x);
  vec4 inView = modelViewMatrix * vec4(drawnPlace(outward, place.y, place.z), 1.0);
  vTowardEye = dot(mat3(modelViewMatrix) * outward, normalize(-inView.xyz));
  gl_Position = inRow(projectionMatrix * inView);
}
