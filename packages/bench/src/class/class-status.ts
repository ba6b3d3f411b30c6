// Where every build of a class stands, and what holds it up.
import type { Design } from "@lamplane/parameters/table";
import { checkWithoutCures, type Finding } from "../checks/index.ts";
import { asBuiltPlane } from "../history/as-built.ts";
import { buildState, type UnreadValue } from "../history/build-state.ts";
import { type Doubt, findDoubt } from "../history/plausibility.ts";
import { MEASURED_KEYS, type MeasuredKey } from "../measured-values.ts";
import type { Step } from "../steps.ts";

/** What holds a build up. */
export type Obstacle =
  | { readonly code: "check-fails"; readonly finding: Finding }
  | { readonly code: "doubtful"; readonly doubt: Doubt }
  | { readonly code: "mouth-too-wide"; readonly by: number };

export interface PlaneStatus {
  readonly name: string;
  /** The next step; absent once the plane is built. */
  readonly step?: Step;
  /** Values that were measured, in the order of the work. */
  readonly measured: readonly MeasuredKey[];
  /** What the next step wants measured. */
  readonly toMeasure: readonly MeasuredKey[];
  /** What steps that are done should have measured and did not. */
  readonly unread: readonly UnreadValue[];
  /** Empty where the build can go on. */
  readonly stuckOn: readonly Obstacle[];
}

export function planeStatus(design: Design): PlaneStatus {
  const { step, toMeasure, unread, mouthTooWideBy } = buildState(design);
  const measured = MEASURED_KEYS.filter((key) => design.measured[key] !== undefined);
  const stops = checkWithoutCures(asBuiltPlane(design)).filter(({ severity }) => severity === "stop");
  return {
    name: design.name,
    ...(step === undefined ? {} : { step }),
    measured,
    toMeasure: toMeasure.map(({ key }) => key),
    unread,
    stuckOn: [
      ...stops.map((finding): Obstacle => ({ code: "check-fails", finding })),
      ...measured.flatMap((key): Obstacle[] => {
        const doubt = findDoubt(design, key);
        return doubt ? [{ code: "doubtful", doubt }] : [];
      }),
      ...(mouthTooWideBy > 0 ? [{ code: "mouth-too-wide", by: mouthTooWideBy } as const] : []),
    ],
  };
}
