// What a reading should come to, in words, where one number would mislead: values read on the way to the mouth wanted.
import type { Design } from "@lamplane/parameters/table";
import { formatLength } from "@lamplane/parameters/units";
import { planeBeforeStep, plannedDesign } from "./history/as-built.ts";
import { type ExpectationRule, MEASURED_ROWS, type MeasuredKey } from "./measured-values.ts";
import { LEAST_RUNS, toleranceReport } from "./tolerance/index.ts";
import { EXPECTED } from "./words/history.ts";

const RULES: Readonly<Record<ExpectationRule, (design: Design) => string>> = {
  mouthAtSole: (design) =>
    EXPECTED.mouthAtSole({
      opening: formatLength(planeBeforeStep(design, "mouth").design.mouth.opening, design),
    }),
  soleWhereMouthOpens: (design) => {
    const { stopShort } = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).mouth;
    return EXPECTED.soleWhereMouthOpens({ short: formatLength(stopShort, design) });
  },
};

/** Undefined where the value expected says it all. */
export function expectationText(design: Design, key: MeasuredKey): string | undefined {
  const { rule } = MEASURED_ROWS[key];
  return rule && RULES[rule](design);
}
