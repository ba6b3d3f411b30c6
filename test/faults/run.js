// Runs every test that is marked as a fault put in, and writes test/faults.md from what was seen: no line of it is typed.
//   node test/faults/run.js          runs them and writes
//   node test/faults/run.js PART     runs those whose path has PART in it, and prints
//   node test/faults/run.js --list   runs nothing; prints as JSON what the document must list
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import { fileURLToPath } from "node:url";
import { createVitest } from "vitest/node";
import { documentOf, linesOf } from "./matrix.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const [asked = ""] = process.argv.slice(2);
const isListing = asked === "--list";

const marked = readdirSync(`${ROOT}test`, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".test.ts") && (isListing || path.includes(asked)))
  .map((path) => `${ROOT}test/${path}`)
  .filter((path) => readFileSync(path, "utf8").includes("/faults.ts"))
  .sort();

const vitest = await createVitest("test", {
  root: ROOT,
  config: `${ROOT}test/support/vitest.config.ts`,
  watch: false,
  reporters: isListing ? [{}] : ["default"],
});
const { testModules, unhandledErrors } = isListing ? await vitest.collect(marked) : await vitest.start(marked);
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
else if (asked !== "") process.stdout.write(documentOf(lines));
else writeFileSync(`${ROOT}test/faults.md`, documentOf(lines));
process.exitCode = broken.length > 0 || cases.some(({ result }) => result.state === "failed") ? 1 : 0;
