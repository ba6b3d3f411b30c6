// Runs every test that is marked as a fault put in, and writes docs/faults.md from what was seen: no line of it is typed.
//   node test/faults/run.js          runs them and writes
//   node test/faults/run.js --list   runs nothing; prints as JSON what the document must list
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import { fileURLToPath } from "node:url";
import { createVitest } from "vitest/node";
import { documentOf, linesOf } from "./matrix.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const isListing = process.argv.includes("--list");

const marked = readdirSync(`${ROOT}test`, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".test.ts"))
  .map((path) => `${ROOT}test/${path}`)
  .filter((path) => readFileSync(path, "utf8").includes("/faults.ts"))
  .sort();

const vitest = await createVitest("test", {
  root: ROOT,
  config: `${ROOT}test/support/vitest.config.ts`,
  watch: false,
  reporters: isListing ? [{}] : ["default"],
});
const files = await Promise.all(marked.map((path) => vitest.getRelevantTestSpecifications([path])));
const { testModules, unhandledErrors } = isListing
  ? await vitest.collectTests(files.flat())
  : await vitest.runTestSpecifications(files.flat());
const broken = testModules.flatMap((module) => [...module.errors()]).concat(unhandledErrors);
for (const { message, stack } of broken) console.error(stack ?? message);
const cases = testModules.flatMap((module) =>
  [...module.children.allTests()]
    .filter((test) => test.meta().fault)
    .map((test) => ({
      row: test.meta().fault,
      name: test.fullName,
      file: relative(ROOT, module.moduleId),
      result: test.result(),
    })),
);
await vitest.close();
const lines = linesOf(cases);
if (isListing) process.stdout.write(`${JSON.stringify(lines)}\n`);
else writeFileSync(`${ROOT}docs/faults.md`, documentOf(lines));
process.exitCode = broken.length > 0 || cases.some(({ result }) => result.state === "failed") ? 1 : 0;
