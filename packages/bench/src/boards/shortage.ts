// What is missing where a body does not come out of the boards at hand, and what would make it come out.
import { withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { asBuiltPlane } from "../history/as-built.ts";
import { lockedParameters } from "../steps.ts";
import { type Board, wholeBoard } from "./board.ts";
import { type BodyWood, bodyWood, layOutBody } from "./plane-boards.ts";

const SIDES = ["length", "width", "thickness"] as const;
export type Side = (typeof SIDES)[number];

/** A board would do by itself if it were larger by this on one side. mm. */
export interface Shortage {
  readonly board: number;
  readonly side: Side;
  readonly by: number;
}

/** A parameter that would make the body come out of the boards as they are, if it were this. mm. */
export interface BoardRemedy {
  readonly parameter: string;
  readonly value: number;
}

const FAR = 400; // mm: a board that is further short is another board
const STEP = 0.1; // mm

const comesOut = (wood: BodyWood, boards: readonly Board[]): boolean =>
  layOutBody(wood, boards, boards.map(wholeBoard)) !== undefined;

/** The least number of steps at which something holds that holds from there on; undefined where it does not at the most. */
function leastSteps(most: number, holds: (steps: number) => boolean): number | undefined {
  if (!holds(most)) return undefined;
  let [fails, does] = [0, most];
  while (does - fails > 1) {
    const middle = Math.floor((fails + does) / 2);
    if (holds(middle)) does = middle;
    else fails = middle;
  }
  return does;
}

/** Each board with the one side on which it is short by least. */
export const shortages = (wood: BodyWood, boards: readonly Board[]): Shortage[] =>
  boards.flatMap((board, i) => {
    const found = SIDES.flatMap((side): Shortage[] => {
      const steps = leastSteps(FAR / STEP, (n) => comesOut(wood, [{ ...board, [side]: board[side] + n * STEP }]));
      return steps === undefined ? [] : [{ board: i, side, by: steps * STEP }];
    });
    return found.toSorted((a, b) => a.by - b.by).slice(0, 1);
  });

/** What may be made less for the sake of a board, and to what at least. mm. */
const MAY_BE_LESS = { "body.trim": 6, "shop.millingAllowance": 0.5, "body.cheek": 8 } as const;

/** The least change of each parameter by itself that does. */
export function boardRemedies(design: Design, boards: readonly Board[]): BoardRemedy[] {
  const locked = lockedParameters(design);
  return (Object.keys(MAY_BE_LESS) as (keyof typeof MAY_BE_LESS)[]).flatMap((parameter): BoardRemedy[] => {
    const [section, key] = parameter.split(".") as ["body", "trim"];
    const now = design[section][key];
    const most = Math.floor((now - MAY_BE_LESS[parameter]) / STEP + 1e-9);
    const valueAfter = (steps: number) => Number((now - steps * STEP).toFixed(6));
    const steps =
      most <= 0 || locked.has(parameter)
        ? undefined
        : leastSteps(most, (n) =>
            comesOut(bodyWood(asBuiltPlane(withValue(design, parameter, valueAfter(n)))), boards),
          );
    return steps === undefined ? [] : [{ parameter, value: valueAfter(steps) }];
  });
}
