// The cut face of a part at the centre plane: section lines joined to loops, filled, and hatched by `capMaterial`.
import {
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  GLSL3,
  ShaderMaterial,
  ShapeUtils,
  Vector2,
  Vector3,
} from "three";
import { cosSinDegrees } from "./angles.ts";

const GRID = 1e3; // per mm: ends nearer than a thousandth are the same corner

/** The filled section; `lines` holds two corners for each section line, all at one z. */
export function capGeometry(lines: Float32Array): BufferGeometry {
  const corners: number[] = [];
  for (const loop of loopsOf(lines)) {
    for (const triangle of ShapeUtils.triangulateShape(loop, []))
      for (const k of triangle) corners.push(loop[k!]!.x, loop[k!]!.y, lines[2] ?? 0);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(Float32Array.from(corners), 3));
  return geometry;
}

/** Closed loops, each begun at a line that no loop has used yet. */
function loopsOf(lines: Float32Array): Vector2[][] {
  const ends = new Map<string, number[]>();
  const keyAt = (i: number): string => `${Math.round(lines[i]! * GRID)},${Math.round(lines[i + 1]! * GRID)}`;
  for (let i = 0; i < lines.length; i += 3) ends.set(keyAt(i), [...(ends.get(keyAt(i)) ?? []), i]);
  const used = new Set<number>();
  const loops: Vector2[][] = [];
  for (let start = 0; start < lines.length; start += 6) {
    const loop: Vector2[] = [];
    let at: number | undefined = start;
    while (at !== undefined && !used.has(lineOf(at))) {
      used.add(lineOf(at));
      loop.push(new Vector2(lines[at]!, lines[at + 1]!));
      const far = otherEnd(at);
      at = ends.get(keyAt(far))?.find((end) => !used.has(lineOf(end)));
    }
    if (loop.length > 2) loops.push(ShapeUtils.isClockWise(loop) ? loop.reverse() : loop);
  }
  return loops;
}

const lineOf = (end: number): number => Math.floor(end / 6);
const otherEnd = (end: number): number => (end % 6 === 0 ? end + 3 : end - 3);

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
