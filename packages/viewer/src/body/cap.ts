// The look of a part's cut face: flat tone, hatched.
import { DoubleSide, GLSL3, ShaderMaterial, Vector2, Vector3 } from "three";
import { cosSinDegrees } from "./angles.ts";

const VERTEX = `
out vec2 place;
void main() {
  place = position.xy;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`;
const FRAGMENT = `
precision highp float;
in vec2 place;
out vec4 colour;
uniform vec3 tone;
uniform vec3 lines;
uniform vec2 hatch;
void main() {
  float phase = dot(place, hatch);
  float spread = max(fwidth(phase), 1e-4);
  float off = abs(fract(phase - 0.5) - 0.5);
  float drawn = (1.0 - smoothstep(0.7 * spread, 1.5 * spread, off)) * (1.0 - smoothstep(0.25, 0.6, spread));
  colour = vec4(mix(tone, lines, drawn * 0.75), 1.0);
}`;

/** @param hatch direction, degrees, and spacing, mm: neighbours differ (ISO 128-3) */
export function capMaterial(hatch: readonly [turn: number, spacing: number]): ShaderMaterial {
  const [turn, spacing] = hatch;
  const [c, s] = cosSinDegrees(turn);
  return new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: {
      tone: { value: new Vector3() },
      lines: { value: new Vector3() },
      hatch: { value: new Vector2(c / spacing, s / spacing) },
    },
  });
}
