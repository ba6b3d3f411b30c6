// How the body is shaded: paper tones by direction, grain drawn as the rings of the tree it came from, hatching where it is cut.
import { DoubleSide, GLSL3, ShaderMaterial, Vector3 } from "three";

export interface Inks {
  readonly paper: number[];
  readonly ink: number[];
  readonly wood: number[];
  readonly woodInk: number[];
  readonly steel: number[];
  readonly shadow: number[];
}

export interface PartLook {
  /** Base tone and the colour of what is drawn on it, 0 to 1. */
  readonly tone: readonly number[];
  readonly lines: readonly number[];
  readonly grain: readonly [number, number, number];
  /** Where the tree's heart lies from the part, mm; the rings are circles about it, square to the grain. */
  readonly heart: readonly [number, number, number];
  /** Direction of the hatching on a cut face, degrees, and its spacing, mm. */
  readonly hatch: readonly [turn: number, spacing: number];
}

const VERTEX = `
out vec3 place;
out vec3 seen;
void main() {
  place = position;
  vec4 eye = modelViewMatrix * vec4(position, 1.0);
  seen = eye.xyz;
  gl_Position = projectionMatrix * eye;
}`;

/*
 * Cut faces: behind a cut, the inside of the far wall is what the eye meets. There the ray is followed back to the cutting
 * plane, and that point is drawn (with its own depth), which caps any closed solid exactly.
 */
const FRAGMENT = `
precision highp float;
in vec3 place;
in vec3 seen;
out vec4 colour;
uniform vec3 tone;
uniform vec3 lines;
uniform vec3 grain;
uniform vec3 heart;
uniform vec2 hatch;
uniform bool cut;
uniform vec3 rayInPart;
uniform mat4 projectionMatrix;
uniform mat4 modelViewMatrix;

float stroke(float phase, float width) {
  float spread = max(fwidth(phase), 1e-4);
  float off = abs(fract(phase - 0.5) - 0.5);
  float sharp = 1.0 - smoothstep(width, width + spread, off);
  return sharp * clamp(0.6 / (spread + 0.3), 0.0, 1.0) * (1.0 - smoothstep(0.35, 0.9, spread));
}

void main() {
  vec3 across = normalize(cross(dFdx(seen), dFdy(seen)));
  bool isInside = !gl_FrontFacing;
  vec3 at = place;
  float depth = gl_FragCoord.z;
  if (cut && place.z > 0.0) discard;
  if (isInside) {
    if (!cut || rayInPart.z > -1e-4) discard;
    at = place - rayInPart * (place.z / rayInPart.z);
    vec4 clip = projectionMatrix * modelViewMatrix * vec4(at, 1.0);
    depth = clip.z / clip.w * 0.5 + 0.5;
    float slant = dot(at.xy, hatch);
    colour = vec4(mix(tone * 0.98 + 0.02, lines, stroke(slant, 0.06) * 0.8), 1.0);
  } else {
    float facing = abs(dot(across, normalize(vec3(-0.35, 0.62, 0.7))));
    vec3 shade = tone * (0.72 + 0.28 * facing);
    float drawn = 0.0;
    if (dot(grain, grain) > 0.5) {
      vec3 from = at - heart;
      vec3 square = from - grain * dot(from, grain);
      float wander = 0.35 * sin(dot(at, grain) * 0.045) + 0.2 * sin(dot(at, grain) * 0.11 + 1.7);
      drawn = stroke(length(square) / 3.1 + wander * 0.4, 0.05) * 0.5;
    }
    colour = vec4(mix(shade, lines, drawn), 1.0);
  }
  gl_FragDepth = depth;
}`;

export function partMaterial(look: PartLook): ShaderMaterial {
  const [turn, spacing] = look.hatch;
  const angle = (turn * Math.PI) / 180;
  const material = new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 2,
    uniforms: {
      tone: { value: new Vector3(...look.tone) },
      lines: { value: new Vector3(...look.lines) },
      grain: { value: new Vector3(...look.grain) },
      heart: { value: new Vector3(...look.heart) },
      hatch: { value: { x: Math.cos(angle) / spacing, y: Math.sin(angle) / spacing } },
      cut: { value: false },
      rayInPart: { value: new Vector3(0, 0, -1) },
    },
  });
  material.extensions.clipCullDistance = false;
  return material;
}
