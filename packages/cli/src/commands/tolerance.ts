// `lamplane tolerance`: which step decides the mouth, and how well each must be done.

import { LEAST_RUNS, MOST_RUNS, TOLERANCE_NOTES, toleranceReport, toleranceText } from "@lamplane/bench";
import { LARGEST_SEED } from "@lamplane/geometry/numerics";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { ARGUMENT_FAULT, MORE } from "../words/commands.ts";

export interface ToleranceOptions {
  readonly seed: number;
  readonly runs: number;
  readonly json: boolean;
  /** Every error of each result, the trial and the sources too. */
  readonly all: boolean;
}

/** @throws InputRefused where seed or runs are no whole numbers within their limits */
export function toleranceCommand(io: Io, design: Design, asked: ToleranceOptions): Exit {
  const seed = requireWholeNumber("--seed", asked.seed, 0, LARGEST_SEED);
  const runs = requireWholeNumber("--runs", asked.runs, LEAST_RUNS, MOST_RUNS);
  const report = toleranceReport(design, { seed, runs });
  if (asked.json) io.out(`${JSON.stringify({ name: design.name, ...report, notes: TOLERANCE_NOTES }, null, 2)}\n`);
  else io.out(`${[...toleranceText(report, design, asked.all), ...(asked.all ? [] : [MORE.tolerance])].join("\n")}\n`);
  return EXIT.done;
}

function requireWholeNumber(option: string, value: number, least: number, most: number): number {
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new InputRefused(ARGUMENT_FAULT.wholeNumber({ option, read: value, least, most }));
}
