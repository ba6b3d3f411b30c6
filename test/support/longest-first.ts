// The order of the test files: what takes longest begins first, so that both workers end together, also where nothing is known of an earlier run.
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The files that take longest on two quiet cores, from the longest on. */
const LONGEST = [
  "browser/labels.long",
  "browser/newcomer.long",
  "browser/sheet.long",
  "browser/bench.long",
  "cli/class.long",
  "cli/examples.long",
  "browser/faults.long",
  "browser/look.long",
  "packages/installed.long",
  "laws/every-design.long",
  "docs",
  "sheets/traveller-pdf",
  "cli/examples",
  "cli/commands",
  "bench/survey/bed-survey",
  "bench/checks/checks",
];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const found = LONGEST.findIndex((name) => moduleId.endsWith(`/test/${name}.test.ts`));
      return found < 0 ? LONGEST.length : found;
    };
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
