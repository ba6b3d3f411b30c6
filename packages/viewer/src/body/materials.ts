// How the body is shaded: paper tones by direction, and the grain drawn as the rings of the tree that a part came from.
import { FrontSide, GLSL3, ShaderMaterial, Vector3 } from "three";

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

const FRAGMENT = `
precision highp float;
in vec3 place;
in vec3 seen;
out vec4 colour;
uniform vec3 tone;
uniform vec3 lines;
uniform vec3 grain;
uniform vec3 heart;
uniform bool cut;

float stroke(float phase, float width) {
  float spread = max(fwidth(phase), 1e-4);
  float off = abs(fract(phase - 0.5) - 0.5);
  float sharp = 1.0 - smoothstep(width, width + spread, off);
  return sharp * clamp(0.6 / (spread + 0.3), 0.0, 1.0) * (1.0 - smoothstep(0.35, 0.9, spread));
}

void main() {
  if (cut && place.z > 0.0) discard;
  vec3 across = normalize(cross(dFdx(seen), dFdy(seen)));
  float facing = abs(dot(across, normalize(vec3(-0.35, 0.62, 0.7))));
  vec3 shade = tone * (0.72 + 0.28 * facing);
  float drawn = 0.0;
  if (dot(grain, grain) > 0.5) {
    vec3 from = place - heart;
    vec3 square = from - grain * dot(from, grain);
    float wander = 0.14 * sin(dot(place, grain) * 0.045) + 0.08 * sin(dot(place, grain) * 0.11 + 1.7);
    drawn = stroke(length(square) / 3.1 + wander, 0.05) * 0.5;
  }
  colour = vec4(mix(shade, lines, drawn), 1.0);
}`;

export function partMaterial(look: PartLook): ShaderMaterial {
  return new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    side: FrontSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 2,
    uniforms: {
      tone: { value: new Vector3(...look.tone) },
      lines: { value: new Vector3(...look.lines) },
      grain: { value: new Vector3(...look.grain) },
      heart: { value: new Vector3(...look.heart) },
      cut: { value: false },
    },
  });
}
