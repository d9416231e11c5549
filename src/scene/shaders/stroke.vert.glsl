// Lines of a constant width on the screen between two places given in the bore's own coordinates.

uniform mat4 modelViewMatrix;  // bore space → view space
uniform mat4 projectionMatrix; // view space → clip space
uniform vec2 viewport;         // CSS pixels
uniform vec4 strokeColours[10]; // sRGB as written and opacity, by role

in vec3 here;  // angle rad, depth mm, deviation on the diameter µm
in vec3 there; // the other end of the segment, the same
in vec3 style; // x side: ±1 at the first end, ±2 at the second, y width in CSS pixels, z role
in vec2 opacity; // of the parts on the far side of the bore and on the side turned to the eye

// From here on lines are outlines, whose segments reach a little past their ends to close the bends.
const float firstOutline = 6.0;
const float reach = 0.12; // of the width

out float vAcross; // CSS pixels from the middle of the line
out float vWidth;  // CSS pixels
out vec4 vColour;  // sRGB as written and opacity

void main() {
  vec4 inView = modelViewMatrix * vec4(drawnPlace(outwardAt(here.x), here.y, here.z), 1.0);
  vec4 clip = projectionMatrix * inView;
  vec4 clipThere = projectionMatrix * (modelViewMatrix * vec4(drawnPlace(outwardAt(there.x), there.y, there.z), 1.0));
  vec2 along = (clipThere.xy / clipThere.w - clip.xy / clip.w) * viewport * (abs(style.x) > 1.5 ? -1.0 : 1.0);
  vec2 across = vec2(-along.y, along.x) / max(length(along), 1e-6);
  float halfWidth = 0.5 * style.y + 1.0;
  vAcross = sign(style.x) * halfWidth;
  vWidth = style.y;
  vec3 outward = mat3(modelViewMatrix) * outwardAt(here.x);
  float towardEye = dot(outward, normalize(-inView.xyz));
  vColour = strokeColours[int(style.z)];
  float near = smoothstep(-0.1, 0.1, towardEye);
  vColour.a *= mix(opacity.x, opacity.y, near);
  // What is faint would show where two segments lie over one another.
  float past = style.z > firstOutline - 0.5 ? reach * style.y * (1.0 - near) * (abs(style.x) > 1.5 ? 1.0 : -1.0) : 0.0;
  vec2 onward = vec2(across.y, -across.x) * past;
  gl_Position = inRow(clip + vec4((across * vAcross + onward) * 2.0 / viewport * clip.w, 0.0, 0.0));
}
