// A maker's toleranceReport: derivatives, and planes made by chance.
import { RUNS, toleranceReport } from "@lamplane/bench";
import { EXAMPLES } from "./corpus.js";
import { beside } from "./measure.js";

export const title = "Tolerances: planes made by chance";
const FEW = 1000;

export async function measured() {
  const groups = [];
  for (const { name, design } of EXAMPLES)
    groups.push({
      of: name,
      rate: "planes",
      rows: await beside(
        [FEW, RUNS].map((runs) => ({
          what: `report with ${runs} runs, seeded`,
          run: () => toleranceReport(design, { seed: 1, runs }),
          each: runs,
        })),
        { repetitions: 15 },
      ),
    });
  return groups;
}
