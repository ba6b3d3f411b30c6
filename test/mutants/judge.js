// A child of `run.js` that keeps one vitest and runs tests with one mutant after another in the place of its source, in memory alone.
// It is told { mutant, tests } and answers whether any test failed. `run.js` ends it where a mutant runs on for ever.
import { fileURLToPath } from "node:url";
import { createVitest } from "vitest/node";

/** From quick to slow: most mutants are seen by the first, and the first to see one ends the run. */
const SLOW_LAST = [
  /limits/,
  /jigs|woods|elevation|figures|outside/,
  /cures/,
  /as-built/,
  /checks.test|mends/,
  /whole|places/,
];
const rank = ({ moduleId }) => SLOW_LAST.findIndex((some) => some.test(moduleId));

/** The mutant in place: { file, start, end, text }; none is the source as it is. */
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
          if (!inPlace || id.split("?")[0] !== inPlace.file) return undefined;
          return { code: code.slice(0, inPlace.start) + inPlace.text + code.slice(inPlace.end), map: null };
        },
      },
    ],
  },
);

async function failsWith({ mutant, tests }) {
  const before = inPlace;
  inPlace = mutant;
  for (const changed of [before, mutant]) if (changed) vitest.invalidateFile(changed.file);
  const specifications = await vitest.globTestSpecifications(tests);
  if (specifications.length === 0) throw new Error(`no tests in ${tests.join(" ")}`);
  for (const each of specifications.sort((a, b) => rank(a) - rank(b))) if (await fails(each)) return true;
  return false;
}

async function fails(specification) {
  // What failed with another mutant would count towards `bail`, and every test after it be skipped and taken for one that sees.
  vitest.state.filesMap.clear();
  vitest.state.idMap.clear();
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications([specification]);
  return unhandledErrors.length > 0 || testModules.length === 0 || testModules.some((module) => !module.ok());
}

process.on("message", async (told) => process.send({ seen: await failsWith(told) }));
process.send({ ready: true });
