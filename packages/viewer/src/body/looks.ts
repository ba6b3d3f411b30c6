// Tones of the parts, read from the style sheet so that light and dark agree with the page; how each is opened and hatched.
import { cosSinDegrees } from "./angles.ts";
import type { PartLook } from "./materials.ts";

export interface Tones {
  readonly ink: number[];
  readonly shadow: number[];
  readonly of: (part: string) => { tone: number[]; lines: number[] };
}

const TONE_OF: Readonly<Record<string, string>> = {
  iron: "--steel",
  "cap-iron": "--cap",
  "cap-screw": "--steel",
  wedge: "--wedge",
  "cross-pin": "--pin",
  "cheek-left": "--cheek",
  "cheek-right": "--cheek",
};

/** Colours that the style sheet gives, 0 to 1 for each channel, linear in nothing: they are drawn as they stand. */
export function readTones(element: Element): Tones {
  const style = getComputedStyle(element);
  const colour = (name: string): number[] => {
    const hex = style.getPropertyValue(name).trim().replace("#", "");
    return [0, 2, 4].map((k) => Number.parseInt(hex.slice(k, k + 2), 16) / 255);
  };
  return {
    ink: colour("--ink"),
    shadow: colour("--shadow"),
    of: (part) => ({
      tone: colour(TONE_OF[part] ?? "--wood"),
      lines: colour(part.startsWith("cap") || part === "iron" ? "--steel-ink" : "--wood-ink"),
    }),
  };
}

const HEART = 150; // mm from the body to the heart of the tree: rings of a board from a common trunk

/** @param rings angle of the growth rings to the sole, degrees: 0 flat sawn, 90 quarter sawn */
export function makePartLook(
  part: string,
  grain: readonly [number, number, number],
  rings: number,
  tones: Tones,
): PartLook {
  const [c, s] = cosSinDegrees(rings);
  const [down, out] = [-c * HEART, s * HEART];
  const heart: [number, number, number] =
    part === "cross-pin"
      ? [0, down, 0]
      : part === "wedge"
        ? [grain[1] * HEART, -grain[0] * HEART, out]
        : [0, down, out];
  const hatch = HATCH[part] ?? ([45, 3] as const);
  return { ...tones.of(part), grain, heart, hatch };
}

/** Neighbouring cut faces are hatched in different directions or spacings (ISO 128-3). */
const HATCH: Readonly<Record<string, readonly [number, number]>> = {
  "front-block": [45, 3.4],
  "bed-block": [135, 3.4],
  iron: [20, 1.1],
  "cap-iron": [110, 1.1],
  "cap-screw": [65, 1.1],
  wedge: [0, 2.2],
  "cross-pin": [90, 1.6],
};

/** How far a part moves when the body is opened along its glue lines, in the plane's frame; `open` 0 to 1. */
export function explodedOffset(part: string, open: number, width: number, bedAngle: number): [number, number, number] {
  const aside = Math.min(1, open * 1.6) * width * 1.05;
  if (part === "cheek-left") return [0, 0, aside];
  if (part === "cheek-right") return [0, 0, -aside];
  const draw = Math.max(0, open - 0.4) * 1.7;
  const up = cosSinDegrees(bedAngle);
  if (part === "wedge") return [up[0] * draw * 75, up[1] * draw * 75, 0];
  if (part === "iron" || part.startsWith("cap")) return [up[0] * draw * 40, up[1] * draw * 40, 0];
  if (part === "front-block") return [-draw * 12, 0, 0];
  return [0, 0, 0];
}
