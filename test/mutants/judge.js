// A child of `judging.js` that keeps one vitest and runs tests with one mutant after another in the place of its source, in memory alone.
// It receives { mutant, tests } and answers { seen, times }: whether a test failed, and what each test file that ran took, in ms.
import { fileURLToPath } from "node:url";
import { createVitest } from "vitest/node";

/** The mutant in place: { path, start, end, text }; none is the source as it is. */
let inPlace;

const vitest = await createVitest(
  "test",
  {
    config: fileURLToPath(new URL("../support/vitest.config.ts", import.meta.url)),
    watch: false,
    bail: 1,
    fileParallelism: false,
    reporters: [{}],
  },
  {
    plugins: [
      {
        name: "mutant",
        enforce: "pre",
        transform(code, id) {
          if (!inPlace || id.split("?")[0] !== inPlace.path) return undefined;
          return { code: code.slice(0, inPlace.start) + inPlace.text + code.slice(inPlace.end), map: null };
        },
      },
    ],
  },
);

/** Runs the test files in turn, up to the first that fails. */
async function judge({ mutant, tests }) {
  const before = inPlace;
  inPlace = mutant;
  for (const changed of [before, mutant]) if (changed) vitest.invalidateFile(changed.path);
  const times = {};
  for (const file of tests) {
    const [specification] = await vitest.globTestSpecifications([file]);
    if (!specification) throw new Error(`no test ${file}`);
    const begin = performance.now();
    const failed = await fails(specification);
    times[file] = performance.now() - begin;
    if (failed) return { seen: true, times };
  }
  return { seen: false, times };
}

async function fails(specification) {
  // What failed with another mutant would count towards `bail`, and every test after it be skipped and taken for one that sees.
  vitest.state.filesMap.clear();
  vitest.state.idMap.clear();
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications([specification]);
  return unhandledErrors.length > 0 || testModules.length === 0 || testModules.some((module) => !module.ok());
}

process.on("message", async (question) => process.send(await judge(question)));
process.send({ ready: true });
