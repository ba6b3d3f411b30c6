// How the tests run against one mutant: it takes the place of its source in memory alone, as the environment tells.
import { mergeConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import base from "../support/vitest.config.ts";

interface Told {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const told: Told | undefined = process.env.MUTANT ? JSON.parse(process.env.MUTANT) : undefined;

/** Quick ones first: most mutants are seen by them, and the first to see one ends the run. */
const SLOW = /laws|whole-cure/;
class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return [...files].sort((a, b) => Number(SLOW.test(a.moduleId)) - Number(SLOW.test(b.moduleId)));
  }
}

export default mergeConfig(base, {
  plugins: [
    {
      name: "mutant",
      enforce: "pre" as const,
      transform(code: string, id: string) {
        if (!told || id.split("?")[0] !== told.file) return undefined;
        return { code: code.slice(0, told.start) + told.text + code.slice(told.end), map: null };
      },
    },
  ],
  test: { bail: 1, fileParallelism: false, reporters: ["dot"], sequence: { sequencer: QuickFirst } },
});
