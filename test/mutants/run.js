// Mutation testing of a seeded sample: how many small faults in the sources the tests see. Writes the table in docs/proof.md.
//   node test/mutants/run.js [how many, 120] [seconds to spend, 900] [a part of the paths to look at]
//   node test/mutants/run.js again [seconds]      those that the table lists as not seen, once more; writes nothing
import { spawn } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { mutantsOf } from "./mutants.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const SOURCES = "packages/parameters/src/";
const REPORT = `${ROOT}docs/proof.md`;
const [BEGIN, END] = ["<!-- mutants: written by `pnpm mutants` -->", "<!-- end of mutants -->"];
const AT_ONCE = 2;
const SEED = 2; // another for each whole run: tests are written for what the last one showed
/** ms; a mutant that runs on for ever is seen, too. */
const LONGEST = 200_000;

/** The tests that are meant to see a fault in a folder. */
const TESTS = {
  elevation: ["test/outside/", "test/parameters/elevation/", "test/laws/figures", "test/laws/places"],
  checks: ["test/parameters/checks/"],
  "bench/as-built": ["test/parameters/bench/as-built/"],
};

const [count = "120", seconds = "900", only = ""] = process.argv.slice(2);

function allMutants() {
  return Object.entries(TESTS).flatMap(([folder, tests]) =>
    readdirSync(`${ROOT}${SOURCES}${folder}`)
      .filter((name) => name.endsWith(".ts"))
      .flatMap((name) => {
        const file = `${ROOT}${SOURCES}${folder}/${name}`;
        return mutantsOf(readFileSync(file, "utf8")).map((mutant) => ({ ...mutant, file, folder, tests }));
      })
      .filter(({ file, line }) => `${file}:${line}:`.includes(only)),
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
  const below = drawing(SEED);
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

/** Whether the tests fail with a mutant in place; an empty one is the source as it is. */
function seen({ file, start, end, text, tests }) {
  return new Promise((resolve) => {
    const child = spawn(
      process.execPath,
      ["node_modules/vitest/vitest.mjs", "run", "--config", "test/mutants/vitest.config.ts", ...tests],
      {
        cwd: ROOT,
        env: { ...process.env, MUTANT: JSON.stringify({ file, start, end, text }) },
        stdio: "ignore",
        detached: true,
      },
    );
    const clock = setTimeout(() => process.kill(-child.pid, "SIGKILL"), LONGEST);
    child.on("close", (code) => {
      clearTimeout(clock);
      resolve(code !== 0);
    });
  });
}

async function judged(sample, until) {
  const [queue, done] = [[...sample], []];
  const worker = async () => {
    for (let mutant = queue.shift(); mutant && Date.now() < until; mutant = queue.shift()) {
      done.push({ ...mutant, seen: await seen(mutant) });
      const { folder, file, line, was, text, seen: isSeen } = done.at(-1);
      console.log(
        `${done.length} ${isSeen ? "seen" : "SURVIVED"} ${folder}/${file.split("/").at(-1)}:${line} ${was} → ${text}`,
      );
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return done;
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
    const [whole, judgedHere] = [all, done].map((some) => some.filter((mutant) => mutant.folder === folder));
    const killed = judgedHere.filter((mutant) => mutant.seen).length;
    const share = killed / (judgedHere.length || 1);
    return `| ${folder} | ${whole.length} | ${judgedHere.length} | ${killed} | ${share.toFixed(2)} | ${wilson(share, judgedHere.length || 1)} |`;
  });
  const survivors = done
    .filter((mutant) => !mutant.seen)
    .map(rowOf)
    .sort();
  return [
    "| sources | mutants in all | tried | seen | share seen | 95 % interval |",
    "| --- | --- | --- | --- | --- | --- |",
    ...rows,
    "",
    "Not seen:",
    "",
    "| where | is | was made |",
    "| --- | --- | --- |",
    ...survivors,
  ].join("\n");
}

const rowOf = ({ folder, file, line, was, text }) =>
  `| ${folder}/${file.split("/").at(-1)}:${line} | \`${flat(was)}\` | \`${flat(text)}\` |`;

const flat = (code) => code.replace(/\s+/g, " ").replaceAll("|", "\\|");

const all = allMutants();
const again = count === "again";
const sample = again ? listed(all, readFileSync(REPORT, "utf8")) : sampleOf(all, Number(count));
for (const tests of new Set(sample.map((mutant) => mutant.tests)))
  if (await seen({ file: "", start: 0, end: 0, text: "", tests }))
    throw new Error(`${tests.join(" ")}: these fail, or take too long, without any mutant`);
const done = await judged(sample, Date.now() + 1000 * Number(seconds));
const table = tableOf(all, done);
console.log(table);
if (only === "" && !again) {
  const text = readFileSync(REPORT, "utf8");
  writeFileSync(
    REPORT,
    `${text.slice(0, text.indexOf(BEGIN))}${BEGIN}\n\n${table}\n\n${text.slice(text.indexOf(END))}`,
  );
}
