import { lightFunctions } from './light.ts';

/**
 * One shader for all solid parts. A part is closed, so a back face seen past the cutting plane is the inside of its
 * material: it is painted flat, with hatching laid in the plane itself. Front faces are lit softly, with the drawn
 * edges of the body and the rim of the cut as lines.
 */
export const partVertex = /* glsl */ `
attribute vec3 rim;
varying vec3 vRim;
varying vec3 vWorld;
varying vec3 vNormal3;
void main() {
  mat4 toWorld = modelMatrix;
  #ifdef USE_INSTANCING
    toWorld = modelMatrix * instanceMatrix;
  #endif
  vec4 world = toWorld * vec4(position, 1.0);
  vWorld = world.xyz;
  vNormal3 = mat3(toWorld) * normal;
  vRim = rim;
  gl_Position = projectionMatrix * viewMatrix * world;
}
`;

export const partFragment = /* glsl */ `
${lightFunctions}
uniform vec4 uPlane;
uniform float uCut;
uniform vec3 uSkin;
uniform vec3 uFace;
uniform vec3 uHatch;
uniform vec3 uLine;
uniform vec3 uGlow;
uniform float uPattern;
uniform float uSlant;
uniform float uSpacing;
uniform float uRims;
uniform float uLamp;
uniform float uMetal;
uniform float uRough;
uniform float uGrain;
uniform float uMottle;
varying vec3 vRim;
varying vec3 vWorld;
varying vec3 vNormal3;

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
  vec3 ray = vWorld - cameraPosition;
  float t = -(dot(uPlane.xyz, cameraPosition) + uPlane.w) / dot(uPlane.xyz, ray);
  vec3 p = cameraPosition + ray * t;
  float u = dot(p, vec3(-uPlane.y, uPlane.x, 0.0));
  float v = p.z;
  float ink = 0.0;
  if (uPattern > 2.5) {
    vec2 cell = vec2(u + v, v - u) / (uSpacing * 1.7);
    vec2 off = fract(cell) - 0.5;
    float aa = fwidth(cell.x);
    ink = 1.0 - smoothstep(0.11 - aa, 0.11 + aa, length(off));
  } else if (uPattern > 0.5) {
    ink = stroke(u * uSlant + v, uSpacing * 1.4142, 0.1);
    if (uPattern > 1.5) ink = max(ink, stroke(v - u * uSlant, uSpacing * 1.4142, 0.1));
  }
  return mix(uFace, uHatch, ink);
}

void main() {
  float depth = dot(uPlane.xyz, vWorld) + uPlane.w;
  if (uCut > 0.5 && depth < 0.0) discard;
  vec3 colour;
  if (uCut > 0.5 && !gl_FrontFacing) {
    colour = hatched() + uGlow * 0.35;
    colour = mix(colour, uLine, 0.85 * nearPlane(depth));
  } else {
    vec3 n = normalize(vNormal3) * (gl_FrontFacing ? 1.0 : -1.0);
    vec3 toEye = normalize(cameraPosition - vWorld);
    if (uLamp > 0.5) {
      float far = distance(cameraPosition, vWorld);
      float fall = 1.35 / (1.0 + 14.0 * far * far);
      float lit = pow(max(dot(n, toEye), 0.0), 0.8);
      colour = uSkin * (0.03 + 1.15 * lit * fall);
      colour += vec3(1.0, 0.96, 0.86) * 0.3 * pow(max(dot(n, toEye), 0.0), 24.0) * fall;
      gl_FragColor = vec4(colour, 1.0);
      #include <colorspace_fragment>
      return;
    }
    float facing = max(dot(n, toEye), 0.0);
    if (uRims > 0.5) {
      vec3 skin = uSkin;
      if (uGrain > 0.0) {
        skin *= 1.0 + uMottle * (grain(vWorld, uGrain) + 0.5 * grain(vWorld, uGrain * 0.37));
      }
      colour = lit(skin, n, toEye, uMetal, uRough);
    } else {
      float sky = 0.62 + 0.2 * n.z;
      float key = max(dot(n, KEY), 0.0);
      colour = uSkin * (sky + 0.3 * key + 0.08 * facing);
    }
    colour += uGlow * (0.25 + 0.35 * (1.0 - facing));
    if (uRims > 0.5) {
      vec3 w = fwidth(vRim);
      vec3 e = vRim / max(w, vec3(1e-6));
      float nearest = min(e.x, min(e.y, e.z));
      float edge = 1.0 - smoothstep(0.5, 1.3, nearest);
      colour = mix(colour, uLine, 0.55 * edge);
      float silhouette = 1.0 - smoothstep(0.06, 0.2, facing);
      colour = mix(colour, uLine, 0.35 * silhouette);
    }
    if (uCut > 0.5) {
      colour = mix(colour, uLine, 0.85 * nearPlane(depth));
    }
  }
  gl_FragColor = vec4(colour, 1.0);
  #include <colorspace_fragment>
}
`;

/** Gas is drawn as the far wall of its own closed body: flat, coloured by what is in it. */
export const gasVertex = /* glsl */ `
varying vec3 vWorld;
varying vec3 vTint;
void main() {
  vec4 world = modelMatrix * instanceMatrix * vec4(position, 1.0);
  vWorld = world.xyz;
  vTint = instanceColor;
  gl_Position = projectionMatrix * viewMatrix * world;
}
`;

export const gasFragment = /* glsl */ `
uniform vec4 uPlane;
varying vec3 vWorld;
varying vec3 vTint;
void main() {
  float depth = dot(uPlane.xyz, vWorld) + uPlane.w;
  if (depth < 0.0) discard;
  float shade = 1.0 - 0.12 * smoothstep(0.0, 0.04, depth);
  gl_FragColor = vec4(vTint * shade, 1.0);
  #include <colorspace_fragment>
}
`;

/** Particles and bubbles: round dots of a size in metres. */
export const dotVertex = /* glsl */ `
attribute float size;
attribute vec3 tint;
varying vec3 vTint;
varying float vHollow;
uniform float uPixelsPerM;
void main() {
  vTint = tint;
  vHollow = step(0.0, -size);
  vec4 eye = modelViewMatrix * vec4(position, 1.0);
  gl_Position = projectionMatrix * eye;
  gl_PointSize = max(2.0, abs(size) * uPixelsPerM / -eye.z);
}
`;

export const dotFragment = /* glsl */ `
varying vec3 vTint;
varying float vHollow;
void main() {
  float r = length(gl_PointCoord - 0.5) * 2.0;
  if (r > 1.0 || (vHollow > 0.5 && r < 0.55)) discard;
  gl_FragColor = vec4(vTint, 1.0);
  #include <colorspace_fragment>
}
`;
