/**
 * The light of the full tier, made here and not fetched: a pale sky, a darker ground, one key lamp and two soft panels.
 * Surfaces answer by metalness and roughness: Lambert for what is scattered, the GGX distribution (Walter et al. 2007)
 * with Schlick's Fresnel term for what is mirrored; the panels' edges soften with roughness.
 */
export const lightFunctions = /* glsl */ `
const vec3 KEY = vec3(0.5571, -0.4558, 0.6939);

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
`;
