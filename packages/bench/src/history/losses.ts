// Measured values that came out otherwise, and what each costs in the finished plane.
import type { Design } from "@lamplane/parameters/table";
import { MEASURED_KEYS, type MeasuredKey, type Step, stepOf } from "../steps.ts";
import { planeOf } from "./as-built.ts";
import { type Change, changes, figureMap, isWorthAWord } from "./changes.ts";
import { expectedOf, lastDone, MEASURED } from "./expected.ts";

/** A measured value off what was asked for, and what it costs in the finished plane. */
export interface Loss {
  readonly key: MeasuredKey;
  /** Step at which it was measured. */
  readonly step: Step;
  readonly unit: "mm" | "°";
  readonly asked: number;
  readonly got: number;
  readonly costs: readonly Change[];
}

/** Every measured value that came out otherwise, in the order of the work. */
export const lossesOf = (design: Design): readonly Loss[] => MEASURED_KEYS.flatMap((key) => lossOf(design, key));

/**
 * Figures in which a maker feels that something came out otherwise, and how far each must be off for that, where it is
 * more than is worth a word at the bench: rooms and outer sizes by half a millimetre, the least that is seen without a
 * rule, where a wedge sits by one, and a throat that narrows by a thick shaving. Common practice, no published source.
 */
const FELT: Readonly<Record<string, number>> = {
  clearanceAngle: 0.5,
  mouthGrowth: 0.02,
  mouthOpening: 0,
  sideClearance: 0,
  bodyHeight: 0.5,
  bodyWidth: 0.5,
  pinToRamp: 0.5,
  woodOverPinHole: 0.5,
  shearOut: 0.5,
  wedgeTip: 0.5,
  wedgeTipFromEdge: 1,
  wedgeAtPin: 0.5,
  recessLand: 0.5,
  recessPad: 0.5,
  throatNarrowing: 0.25,
  throatAtTop: 1,
};

export const isFelt = (key: string): boolean => Object.hasOwn(FELT, key);

const costs = (key: string, unit: string, difference: number): boolean =>
  isWorthAWord(key, unit, difference) && Math.abs(difference) > FELT[key]!;

/** Read on the way to the mouth wanted: more wood left, or a mouth still narrow, has cost nothing. */
const ON_THE_WAY: ReadonlySet<MeasuredKey> = new Set(["allowanceLeft", "mouthSeen"]);

/** What one measured value costs: the plane as it stands beside the plane had that value come out as expected. */
function lossOf(design: Design, key: MeasuredKey): Loss[] {
  if (ON_THE_WAY.has(key)) return [];
  const got = design.measured[key];
  const asked = got === undefined ? undefined : expectedOf(design, key);
  if (got === undefined || asked === undefined || !isWorthAWord(key, MEASURED[key].unit, got - asked)) return [];
  const { [key]: _, ...others } = design.measured;
  const without = { ...design, measured: { ...others, done: lastDone(design) } as Design["measured"] };
  const paid = changes(figureMap(planeOf(without)), planeOf(design), isFelt, costs);
  return [{ key, step: stepOf(key), unit: MEASURED[key].unit, asked, got, costs: paid }];
}
