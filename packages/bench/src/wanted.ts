// What a reading should come to, in words, where one number would mislead: values read on the way to the mouth wanted.
import type { Design } from "@lamplane/parameters/table";
import { formatFineLength } from "@lamplane/parameters/units";
import { planeBeforeStep, plannedDesign } from "./history/as-built.ts";
import type { MeasuredKey } from "./steps.ts";
import { LEAST_RUNS, toleranceReport } from "./tolerance/index.ts";

/** Undefined where the value expected says it all. */
export function wantedText(design: Design, key: MeasuredKey): string | undefined {
  const { units } = design;
  if (key === "mouthSeen")
    return `closed at first, ${formatFineLength(planeBeforeStep(design, "mouth").design.mouth.opening, units)} at last`;
  if (key !== "allowanceLeft") return undefined;
  const { stopShort } = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).mouth;
  return `${formatFineLength(stopShort, units)} or more at first, 0 once the mouth is as wanted`;
}
