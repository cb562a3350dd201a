import { cutFunctions } from './cut.ts';
import { fullLight, lampLight, plainLight } from './light.ts';

/**
 * One shader for all solid parts. A part is closed, so a back face seen past the cutting plane is the inside of its
 * material: it is painted flat, with hatching laid in the plane itself. Front faces are lit softly, with the drawn
 * edges of the body and the rim of the cut as lines.
 *
 * What a part does not need is left out when the shader is compiled: a processor that stands in for a graphics card
 * works both sides of every branch, for every pixel. CUT, LAMP and FULL are defined or not; PATTERN is a number.
 * Without LAMP and FULL light is worked out at the corners alone, and all colours are the screen's own from there on.
 */
export const partVertex = /* glsl */ `
varying vec3 vWorld;
#if defined(LAMP) || defined(FULL)
  varying vec3 vNormal3;
#else
  ${plainLight}
#endif
#ifdef FULL
  attribute vec3 rim;
  varying vec3 vRim;
#endif
void main() {
  mat4 toWorld = modelMatrix;
  #ifdef USE_INSTANCING
    toWorld = modelMatrix * instanceMatrix;
  #endif
  vec4 world = toWorld * vec4(position, 1.0);
  vec3 outward = mat3(toWorld) * normal;
  vWorld = world.xyz;
  #if defined(LAMP) || defined(FULL)
    vNormal3 = outward;
  #else
    vSkin = lit(normalize(outward), normalize(cameraPosition - world.xyz));
  #endif
  #ifdef FULL
    vRim = rim;
  #endif
  gl_Position = projectionMatrix * viewMatrix * world;
}
`;

export const partFragment = /* glsl */ `
varying vec3 vWorld;
#ifdef CUT
  ${cutFunctions}
#endif
#ifdef LAMP
  ${lampLight}
#elif defined(FULL)
  ${fullLight}
#else
  varying vec3 vSkin;
  vec3 skinColour() { return vSkin; }
#endif

void main() {
  #ifdef CUT
    float depth = dot(uPlane.xyz, vWorld) + uPlane.w;
    if (depth < 0.0) discard;
    vec3 colour = gl_FrontFacing ? skinColour() : hatched();
    colour = mix(colour, uLine, 0.85 * nearPlane(depth));
  #else
    vec3 colour = skinColour();
  #endif
  gl_FragColor = vec4(colour, 1.0);
  #if defined(LAMP) || defined(FULL)
    #include <colorspace_fragment>
  #endif
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
