const key = /* glsl */ `
const vec3 KEY = vec3(0.5571, -0.4558, 0.6939);
`;

/** The light of the plain tier, worked out at a body's corners: pale from above, a key lamp, a little from the eye. */
export const plainLight = /* glsl */ `
${key}
uniform vec3 uSkin;
uniform vec3 uGlow;
varying vec3 vSkin;

vec3 onScreen(vec3 c) {
  return mix(1.055 * pow(c, vec3(1.0 / 2.4)) - 0.055, c * 12.92, vec3(lessThanEqual(c, vec3(0.0031308))));
}

vec3 lit(vec3 n, vec3 toEye) {
  float facing = max(dot(n, toEye), 0.0);
  float light = 0.62 + 0.2 * n.z + 0.3 * max(dot(n, KEY), 0.0) + 0.08 * facing;
  return onScreen(min(uSkin * light + uGlow * (0.25 + 0.35 * (1.0 - facing)), 1.0));
}
`;

/** Down the bore: a lamp at the eye and no other light. */
export const lampLight = /* glsl */ `
uniform vec3 uSkin;
varying vec3 vNormal3;

vec3 skinColour() {
  vec3 n = normalize(vNormal3) * (gl_FrontFacing ? 1.0 : -1.0);
  float toward = max(dot(n, normalize(cameraPosition - vWorld)), 0.0);
  float far = distance(cameraPosition, vWorld);
  float fall = 1.35 / (1.0 + 14.0 * far * far);
  vec3 colour = uSkin * (0.03 + 1.15 * pow(toward, 0.8) * fall);
  return colour + vec3(1.0, 0.96, 0.86) * 0.3 * pow(toward, 24.0) * fall;
}
`;

/**
 * The light of the full tier, made here and not fetched: a pale sky, a darker ground, one key lamp and two soft panels.
 * Surfaces answer by metalness and roughness: Lambert for what is scattered, the GGX distribution (Walter et al. 2007)
 * with Schlick's Fresnel term for what is mirrored; the panels' edges soften with roughness.
 */
export const fullLight = /* glsl */ `
${key}
#ifndef CUT
  uniform vec3 uLine;
#endif
uniform vec3 uSkin;
uniform vec3 uGlow;
uniform float uMetal;
uniform float uRough;
uniform float uGrain;
uniform float uMottle;
varying vec3 vRim;
varying vec3 vNormal3;

float panel(vec3 d, vec3 at, float size, float soft) {
  return smoothstep(size - soft, size + soft, dot(d, at));
}

vec3 surroundings(vec3 d, float rough) {
  float blur = mix(0.06, 0.85, rough);
  vec3 c = mix(vec3(0.40, 0.37, 0.33), vec3(0.93, 0.96, 1.0), smoothstep(-0.15 - blur, 0.25 + blur, d.z));
  float near = 1.0 - 0.75 * rough;
  c += vec3(1.5, 1.42, 1.3) * near * panel(d, normalize(vec3(0.75, -0.55, 0.35)), 0.9, 0.1 * blur + 0.02);
  c += vec3(0.75, 0.82, 0.95) * near * panel(d, normalize(vec3(0.35, 0.9, 0.25)), 0.86, 0.12 * blur + 0.02);
  return c;
}

float chance(vec3 p) {
  p = fract(p * 0.3183099 + 0.1);
  p *= 17.0;
  return fract(p.x * p.y * p.z * (p.x + p.y + p.z));
}

/** Even grain of a size in metres, about zero. */
float grain(vec3 p, float size) {
  vec3 q = p / size;
  vec3 i = floor(q);
  vec3 f = fract(q);
  f = f * f * (3.0 - 2.0 * f);
  float low = mix(
    mix(chance(i), chance(i + vec3(1, 0, 0)), f.x),
    mix(chance(i + vec3(0, 1, 0)), chance(i + vec3(1, 1, 0)), f.x), f.y);
  float high = mix(
    mix(chance(i + vec3(0, 0, 1)), chance(i + vec3(1, 0, 1)), f.x),
    mix(chance(i + vec3(0, 1, 1)), chance(i + vec3(1, 1, 1)), f.x), f.y);
  return mix(low, high, f.z) - 0.5;
}

vec3 lit(vec3 skin, vec3 n, vec3 v, float metal, float rough) {
  float nv = max(dot(n, v), 0.02);
  vec3 f0 = mix(vec3(0.04), skin, metal);
  vec3 fresnel = f0 + (max(vec3(1.0 - rough), f0) - f0) * pow(1.0 - nv, 5.0);
  vec3 ambient = mix(vec3(0.52, 0.49, 0.45), vec3(0.86, 0.88, 0.9), 0.5 + 0.5 * n.z);
  vec3 c = skin * (1.0 - metal) * (1.0 - fresnel) * ambient;
  c += fresnel * surroundings(reflect(-v, n), rough) * mix(1.0, 0.9, rough);
  float nl = max(dot(n, KEY), 0.0);
  vec3 h = normalize(KEY + v);
  float nh = max(dot(n, h), 0.0);
  float a = rough * rough;
  float spread = nh * nh * (a * a - 1.0) + 1.0;
  float d = a * a / (3.14159 * spread * spread);
  float k = (rough + 1.0) * (rough + 1.0) / 8.0;
  float g = 1.0 / ((nv * (1.0 - k) + k) * (max(nl, 0.02) * (1.0 - k) + k));
  vec3 mirrored = (f0 + (1.0 - f0) * pow(1.0 - max(dot(h, v), 0.0), 5.0)) * min(d * g * 0.25, 8.0);
  return c + (skin * (1.0 - metal) * 0.42 + mirrored * 0.9) * nl;
}

/** The body's drawn edges, and a darker rim where it turns from the eye. */
vec3 edged(vec3 colour, float facing) {
  vec3 w = fwidth(vRim);
  vec3 e = vRim / max(w, vec3(1e-6));
  float nearest = min(e.x, min(e.y, e.z));
  float edge = 1.0 - smoothstep(0.5, 1.3, nearest);
  colour = mix(colour, uLine, 0.55 * edge);
  float silhouette = 1.0 - smoothstep(0.06, 0.2, facing);
  return mix(colour, uLine, 0.35 * silhouette);
}

vec3 skinColour() {
  vec3 n = normalize(vNormal3);
  vec3 toEye = normalize(cameraPosition - vWorld);
  float facing = max(dot(n, toEye), 0.0);
  vec3 skin = uSkin;
  if (uGrain > 0.0) {
    skin *= 1.0 + uMottle * (grain(vWorld, uGrain) + 0.5 * grain(vWorld, uGrain * 0.37));
  }
  vec3 colour = lit(skin, n, toEye, uMetal, uRough) + uGlow * (0.25 + 0.35 * (1.0 - facing));
  return edged(colour, facing);
}
`;
