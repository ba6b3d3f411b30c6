// Mutation testing of a seeded sample: how many small faults in the sources the tests see. Writes the table in test/proof.md.
//   node test/mutants/run.js [how many, 120] [seconds to spend, 900] [a part of the paths to look at] [seed]
//   node test/mutants/run.js again [seconds]      those that the table lists as not seen, once more; writes nothing
// Those of which `equivalent.js` says why nobody can see them are tried as well, and told apart from the rest.
import { fork } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { EQUIVALENT } from "./equivalent.js";
import { mutantsOf } from "./mutants.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const PACKAGES = "packages/";
const REPORT = `${ROOT}test/proof.md`;
const [BEGIN, END] = ["<!-- mutants: written by `pnpm mutants` -->", "<!-- end of mutants -->"];
const AT_ONCE = 2;
/** ms; a mutant that runs on for ever is seen, too. */
const LONGEST = 200_000;

/** The tests that are meant to see a fault in a folder. */
const TESTS = {
  "geometry/src": ["test/geometry/", "test/outside/", "test/parameters/elevation/"],
  "parameters/src/elevation": [
    "test/outside/",
    "test/parameters/elevation/",
    "test/laws/figures",
    "test/laws/transforms",
  ],
  "bench/src/checks": ["test/bench/checks/"],
  "bench/src/history": ["test/bench/history/"],
};

/** The seed is another for each whole run: tests are written for what the last one showed. */
const [count = "120", seconds = "900", only = "", seed = "3"] = process.argv.slice(2);

function allMutants() {
  return Object.entries(TESTS).flatMap(([folder, tests]) =>
    readdirSync(`${ROOT}${PACKAGES}${folder}`)
      .filter((name) => name.endsWith(".ts"))
      .flatMap((name) => {
        const file = `${ROOT}${PACKAGES}${folder}/${name}`;
        const code = readFileSync(file, "utf8");
        return mutantsOf(code).map((mutant) =>
          told({ ...mutant, file, folder, tests, marked: markedIn(code, mutant) }),
        );
      })
      .filter(({ file, line }) => `${file}:${line}:`.includes(only)),
  );
}

/** The lines of a mutant with what it replaces between « and ». */
function markedIn(code, { start, end }) {
  const [from, to] = [code.lastIndexOf("\n", start - 1) + 1, code.indexOf("\n", end)];
  return `${code.slice(from, start)}«${code.slice(start, end)}»${code.slice(end, to)}`.replace(/\s+/g, " ").trim();
}

/** A mutant with the reason why nobody can see it, where `equivalent.js` knows one. */
const told = (mutant) => ({ ...mutant, why: EQUIVALENT.find((entry) => isOf(entry, mutant))?.why });
const isOf = (entry, { file, marked, text }) =>
  file.endsWith(`/${entry.file}`) && entry.line === marked && entry.made === text;

/** An entry that no mutant fits any more explains nothing. */
function refuseStale(all) {
  const stale = EQUIVALENT.filter((entry) => all.filter((mutant) => isOf(entry, mutant)).length !== 1);
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

/** As many of each folder, in turns, so that a run that is broken off has seen all alike. */
function sampleOf(all, wanted) {
  const below = drawing(Number(seed));
  const byFolder = Object.keys(TESTS).map((folder) => {
    const left = all.filter((mutant) => mutant.folder === folder);
    const here = Math.min(left.length, Math.ceil(wanted / Object.keys(TESTS).length));
    return Array.from({ length: here }, () => left.splice(below(left.length), 1)[0]);
  });
  const longest = Math.max(...byFolder.map((some) => some.length));
  return Array.from({ length: longest }, (_, i) => byFolder.flatMap((some) => some.slice(i, i + 1))).flat();
}

/** Mutants of the report's table of those not seen. */
const listed = (all, report) => all.filter((mutant) => report.includes(rowOf(mutant)));

/** One that runs tests for one mutant after another, and is begun anew after one that runs on for ever. */
function judge() {
  let child;
  const begun = () => {
    child = fork(`${ROOT}test/mutants/judge.js`, { cwd: ROOT, detached: true, stdio: "ignore" });
    return new Promise((resolve) => child.once("message", resolve));
  };
  const end = () => {
    if (child) process.kill(-child.pid, "SIGKILL");
    child = undefined;
  };
  /** Whether the tests fail with a mutant in place; none is the source as it is. */
  const sees = async (mutant, tests) => {
    if (!child) await begun();
    const { file, start, end: to, text } = mutant ?? {};
    let clock;
    const answer = new Promise((resolve) => {
      child.once("message", ({ seen }) => resolve(seen));
      clock = setTimeout(() => resolve(undefined), LONGEST);
    });
    child.send({ mutant: mutant && { file, start, end: to, text }, tests });
    const seen = await answer;
    clearTimeout(clock);
    if (seen === undefined) end();
    return seen ?? true;
  };
  return { sees, end };
}

async function judged(sample, until) {
  const [queue, done] = [[...sample], []];
  const worker = async () => {
    const { sees, end } = judge();
    for (let mutant = queue.shift(); mutant && Date.now() < until; mutant = queue.shift()) {
      const each = { ...mutant, seen: await sees(mutant, mutant.tests) };
      done.push(each);
      const how = each.seen ? "seen" : each.why ? "as explained" : "SURVIVED";
      console.log(`${done.length} ${how} ${placeOf(each)} ${flat(each.marked)} → ${flat(each.text)}`);
    }
    await refuseAstray(sees, done);
    end();
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return done;
}

/** A judge that finds the source as it is at fault, once it has judged mutants, has judged nothing. */
async function refuseAstray(sees, done) {
  const { tests } = done.findLast((mutant) => mutant.seen) ?? {};
  if (tests && (await sees(undefined, tests)))
    throw new Error("the source as it is, judged after mutants, is at fault");
}

/** 95 % interval of a share. @see E. B. Wilson, JASA 22 (1927) 209–212 */
function wilson(share, n) {
  const z2 = 1.959964 ** 2;
  const middle = (share + z2 / (2 * n)) / (1 + z2 / n);
  const half = (Math.sqrt(z2) / (1 + z2 / n)) * Math.sqrt((share * (1 - share)) / n + z2 / (4 * n * n));
  return `${(middle - half).toFixed(2)} … ${(middle + half).toFixed(2)}`;
}

function tableOf(all, done) {
  const rows = Object.keys(TESTS).map((folder) => {
    const [whole, here] = [all, done].map((some) => some.filter((mutant) => mutant.folder === folder));
    const told = here.filter((mutant) => mutant.why && !mutant.seen).length;
    const killed = here.filter((mutant) => mutant.seen).length;
    const n = here.length - told || 1;
    return `| ${folder} | ${whole.length} | ${here.length} | ${told} | ${killed} | ${(killed / n).toFixed(2)} | ${wilson(killed / n, n)} |`;
  });
  return [
    `Seed ${seed}.`,
    "",
    "| sources | mutants in all | tried | told apart by nothing | seen | share seen of the rest | 95 % interval |",
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...rows,
    "",
    "Not seen:",
    "",
    "| where | is | was made |",
    "| --- | --- | --- |",
    ...done
      .filter((mutant) => !mutant.seen && !mutant.why)
      .map(rowOf)
      .sort(),
    "",
    "Told apart by nothing, and why (all that `test/mutants/equivalent.js` holds; each is tried when the sample draws it, and must not be seen):",
    "",
    "| where | is « » | was made | why nobody sees it |",
    "| --- | --- | --- | --- |",
    ...all
      .filter((mutant) => mutant.why)
      .map(whyRow)
      .sort(),
  ].join("\n");
}

const placeOf = ({ folder, file, line }) => `${folder}/${file.split("/").at(-1)}:${line}`;
const rowOf = (mutant) => `| ${placeOf(mutant)} | \`${flat(mutant.was)}\` | \`${flat(mutant.text)}\` |`;
const whyRow = (mutant) =>
  `| ${placeOf(mutant)} | \`${flat(mutant.marked)}\` | \`${flat(mutant.text)}\` | ${mutant.why} |`;

const flat = (code) => code.replace(/\s+/g, " ").replaceAll("|", "\\|");

const all = allMutants();
if (only === "") refuseStale(all);
const again = count === "again";
const sample = again ? listed(all, readFileSync(REPORT, "utf8")) : sampleOf(all, Number(count));
const sound = judge();
for (const tests of new Set(sample.map((mutant) => mutant.tests)))
  if (await sound.sees(undefined, tests))
    throw new Error(`${tests.join(" ")}: these fail, or take too long, without any mutant`);
sound.end();
const done = await judged(sample, Date.now() + 1000 * Number(seconds));
const wrong = done.filter((mutant) => mutant.seen && mutant.why);
const table = tableOf(all, done);
console.log(table);
if (only === "" && !again) {
  const text = readFileSync(REPORT, "utf8");
  writeFileSync(
    REPORT,
    `${text.slice(0, text.indexOf(BEGIN))}${BEGIN}\n\n${table}\n\n${text.slice(text.indexOf(END))}`,
  );
}
if (wrong.length > 0)
  throw new Error(
    `equivalent.js says that nothing sees these, but tests do:\n${wrong.map((each) => each.marked).join("\n")}`,
  );
