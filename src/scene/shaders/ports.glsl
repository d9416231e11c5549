// Ports as holes: x from depth, y to depth, mm; z angle of the middle, w half of the angular width, rad.

uniform vec4 ports[32];
uniform int portCount;

const float portCornerMm = 2.0; // corners are rounded inside the typed rectangle only

// Distance on the unrolled wall to the nearest port edge, mm; negative inside a port. Angle rad, depth mm.
float portDistance(float angle, float depthMm) {
  float nearest = 1e3;
  for (int i = 0; i < 32; i++) {
    if (i >= portCount) break;
    vec4 port = ports[i];
    float turn = mod(angle - port.z + PI, 2.0 * PI) - PI;
    vec2 halfSize = vec2(port.w * 0.5 * middleMm, 0.5 * (port.y - port.x));
    float corner = min(portCornerMm, min(halfSize.x, halfSize.y));
    vec2 past = abs(vec2(turn * 0.5 * middleMm, depthMm - 0.5 * (port.x + port.y))) - halfSize + corner;
    nearest = min(nearest, length(max(past, 0.0)) + min(max(past.x, past.y), 0.0) - corner);
  }
  return nearest;
}
