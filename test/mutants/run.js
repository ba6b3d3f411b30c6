// Mutation testing of a seeded sample: how many small faults in the sources the quick tests see. Writes the tables in test/proof.md.
//   node test/mutants/run.js [how many, 195] [seconds to spend, 3600] [a part of the paths to look at] [seed]
//   node test/mutants/run.js again [seconds]      those that the table lists as not seen, once more; writes nothing
import { readFileSync, writeFileSync } from "node:fs";
import { EQUIVALENT } from "./equivalent.js";
import { GROUPS, ROOT, sourcesOf, testsOf } from "./groups.js";
import { judgeSample, orderTests } from "./judging.js";
import { mutantsOf } from "./mutants.js";
import { placeOf, reportOf, survivorRow } from "./report.js";

const REPORT = `${ROOT}test/proof.md`;
const [BEGIN, END] = ["<!-- mutants: written by `pnpm mutants` -->", "<!-- end of mutants -->"];

/** The seed is another for each whole run: tests are written for what the last one showed. */
const [count = "195", seconds = "3600", only = "", seed = "4"] = process.argv.slice(2);

function allMutants() {
  return GROUPS.flatMap((group) =>
    sourcesOf(group).flatMap((file) => {
      const code = readFileSync(`${ROOT}${file}`, "utf8");
      return mutantsOf(code, file).map((mutant) => {
        const marked = markedIn(code, mutant);
        const why = EQUIVALENT.find((entry) => isOf(entry, file, marked, mutant.text))?.why;
        return { ...mutant, file, path: `${ROOT}${file}`, group: group.name, marked, why };
      });
    }),
  ).filter((mutant) => `${mutant.group} ${mutant.file}:${mutant.line}:`.includes(only));
}

/** The lines of a mutant with what it replaces between « and ». */
function markedIn(code, { start, end }) {
  const [from, to] = [code.lastIndexOf("\n", start - 1) + 1, code.indexOf("\n", end)];
  return `${code.slice(from, start)}«${code.slice(start, end)}»${code.slice(end, to)}`.replace(/\s+/g, " ").trim();
}

const isOf = (entry, file, marked, text) =>
  file.endsWith(`/${entry.file}`) && entry.line === marked && entry.made === text;

/** An entry that no mutant fits any more explains nothing. */
function refuseStale(all) {
  const fits = (entry) => all.filter(({ file, marked, text }) => isOf(entry, file, marked, text)).length;
  const stale = EQUIVALENT.filter((entry) => fits(entry) !== 1);
  if (stale.length === 0) return;
  throw new Error(
    `equivalent.js: no mutant, or more than one, is\n${stale.map(({ file, line, made }) => `${file}: ${line} → ${made}`).join("\n")}`,
  );
}

/** Whole numbers below a bound that follow from the seed (Lehmer, 1951; Park and Miller, 1988). */
function drawing(seed) {
  let state = seed;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

/** As many of each group, in turns, so that a run that is broken off has tried all alike. */
function sampleOf(all, wanted) {
  const below = drawing(Number(seed));
  const byGroup = GROUPS.map(({ name }) => {
    const left = all.filter((mutant) => mutant.group === name);
    const here = Math.min(left.length, Math.ceil(wanted / GROUPS.length));
    return Array.from({ length: here }, () => left.splice(below(left.length), 1)[0]);
  });
  const longest = Math.max(...byGroup.map((some) => some.length));
  return Array.from({ length: longest }, (_, i) => byGroup.flatMap((some) => some.slice(i, i + 1))).flat();
}

function print(mutant, number) {
  const how = mutant.seen ? "seen" : mutant.why ? "equivalent" : "SURVIVED";
  console.log(`${number} ${how} ${placeOf(mutant)} ${mutant.marked} → ${mutant.text}`);
}

/** Puts the tables between their marks. */
function writeReport(tables) {
  const text = readFileSync(REPORT, "utf8");
  writeFileSync(
    REPORT,
    `${text.slice(0, text.indexOf(BEGIN))}${BEGIN}\n\n${tables}\n\n${text.slice(text.indexOf(END))}`,
  );
}

const all = allMutants();
if (only === "") refuseStale(all);
const again = count === "again";
const report = readFileSync(REPORT, "utf8");
const sample = again ? all.filter((mutant) => report.includes(survivorRow(mutant))) : sampleOf(all, Number(count));
const ordered = await orderTests(
  GROUPS.filter(({ name }) => sample.some((mutant) => mutant.group === name)),
  testsOf,
);
const until = Date.now() + 1000 * Number(seconds);
const judged = sample.filter(({ group }) => ordered.has(group));
const done = await judgeSample(judged, { ordered, atOnce: 2, until, report: print });
const tables = reportOf(GROUPS, all, done, seed);
console.log(tables);
if (only === "" && !again) writeReport(tables);
if (judged.length < sample.length) process.exitCode = 1;
const wrong = done.filter((mutant) => mutant.seen && mutant.why);
if (wrong.length > 0)
  throw new Error(
    `equivalent.js says that nothing sees these, but tests do:\n${wrong.map((each) => each.marked).join("\n")}`,
  );
