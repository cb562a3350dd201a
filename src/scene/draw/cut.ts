/**
 * The face a section plane leaves: flat colour with hatching laid in the plane itself, whatever stands behind it.
 * PATTERN is 0 for none, 1 for lines, 2 for lines both ways, 3 for dots.
 */
export const cutFunctions = /* glsl */ `
uniform vec4 uPlane;
uniform vec3 uFace;
uniform vec3 uHatch;
uniform vec3 uLine;
uniform float uSlant;
uniform float uSpacing;

float stroke(float at, float spacing, float weight) {
  float c = at / spacing;
  float aa = fwidth(c);
  float d = abs(fract(c) - 0.5);
  return 1.0 - smoothstep(weight - aa, weight + aa, d);
}

/** One where the skin meets the section plane, within a pixel or so: the drawn outline of the cut. */
float nearPlane(float depth) {
  return 1.0 - smoothstep(0.7, 1.7, depth / max(fwidth(depth), 1e-7));
}

vec3 hatched() {
  #if PATTERN == 0
    return uFace;
  #else
    vec3 ray = vWorld - cameraPosition;
    float t = -(dot(uPlane.xyz, cameraPosition) + uPlane.w) / dot(uPlane.xyz, ray);
    vec3 p = cameraPosition + ray * t;
    float u = dot(p, vec3(-uPlane.y, uPlane.x, 0.0));
    float v = p.z;
    #if PATTERN == 3
      vec2 cell = vec2(u + v, v - u) / (uSpacing * 1.7);
      vec2 off = fract(cell) - 0.5;
      float aa = fwidth(cell.x);
      float ink = 1.0 - smoothstep(0.11 - aa, 0.11 + aa, length(off));
    #else
      float ink = stroke(u * uSlant + v, uSpacing * 1.4142, 0.1);
    #endif
    #if PATTERN == 2
      ink = max(ink, stroke(v - u * uSlant, uSpacing * 1.4142, 0.1));
    #endif
    return mix(uFace, uHatch, ink);
  #endif
}
`;
