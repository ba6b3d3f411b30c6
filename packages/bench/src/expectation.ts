// What a reading should come to, in words, where one number would mislead: values read on the way to the mouth wanted.
import { type MouthSides, mouthOpeningAt } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatLength } from "@lamplane/parameters/units";
import { planeBeforeStep, plannedDesign } from "./history/as-built.ts";
import { FINE_SIGNIFICANCE } from "./history/changes.ts";
import { type ExpectationRule, MEASURED_ROWS, type MeasuredKey } from "./measured-values.ts";
import { LEAST_RUNS, toleranceReport } from "./tolerance/index.ts";
import { EXPECTED } from "./words/history.ts";

const RULES: Readonly<Record<ExpectationRule, (design: Design) => string>> = {
  mouthAtSole: (design) => {
    const plane = planeBeforeStep(design, "mouth");
    const first = firstMouth(plane, design.measured.allowanceLeft ?? leftForMouth(design));
    return EXPECTED.mouthAtSole({
      first: first === undefined ? undefined : formatLength(first, design),
      opening: formatLength(plane.design.mouth.opening, design),
    });
  },
  soleWhereMouthOpens: (design) => EXPECTED.soleWhereMouthOpens({ short: formatLength(leftForMouth(design), design) }),
};

/** Wood left under the planned sole when it is first trued, mm. */
const leftForMouth = (design: Design): number =>
  toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).mouth.stopShort;

/** The mouth at its first reading, mm, so much wood left under the planned sole; undefined where it is still closed. */
export function firstMouth(sides: MouthSides, left: number): number | undefined {
  const opening = mouthOpeningAt(sides, -left);
  return opening < FINE_SIGNIFICANCE ? undefined : opening;
}

/** Undefined where the value expected says it all. */
export function expectationText(design: Design, key: MeasuredKey): string | undefined {
  const { rule } = MEASURED_ROWS[key];
  return rule && RULES[rule](design);
}
