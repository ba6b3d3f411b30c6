// `pnpm bench`: every *.bench.js beside this file, one after another. Nothing is asserted here. --json tells it as data, --long adds what takes minutes,
// --base=COMMIT measures the commands of another state of the sources in turn with these; words choose subjects.
import { readdirSync, readFileSync } from "node:fs";
import { arch, cpus, platform, totalmem } from "node:os";
import { fileURLToPath } from "node:url";
import { buildAt } from "./base.js";
import { EXAMPLES } from "./corpus.js";
import { LEAST_REPETITIONS } from "./measure.js";
import { lookAtMachine, quietText } from "./quiet.js";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const [options, words] = [[], []];
for (const arg of process.argv.slice(2)) (arg.startsWith("--") ? options : words).push(arg);
const json = options.includes("--json");
const BASE = /^--base=(.+)$/;
const commit = options.flatMap((option) => BASE.exec(option)?.[1] ?? [])[0];

const subjects = readdirSync(HERE)
  .filter((file) => file.endsWith(".bench.js"))
  .map((file) => ({ file, name: file.replace(/\.bench\.js$/, "") }))
  .filter(({ name }) => words.length === 0 || words.includes(name));
const unknown = [
  ...options.filter((option) => !["--json", "--long"].includes(option) && !BASE.test(option)),
  ...words.filter((word) => !subjects.some(({ name }) => name === word)),
];
if (unknown.length > 0) {
  const all = readdirSync(HERE).flatMap((file) => /^(.+)\.bench\.js$/.exec(file)?.[1] ?? []);
  console.error(
    `${unknown.join(" ")}: not known here; options are --json, --long and --base=COMMIT, subjects ${all.join(", ")}`,
  );
  process.exit(2);
}

const versionIn = (path) =>
  JSON.parse(readFileSync(new URL(`../../${path}/package.json`, import.meta.url), "utf8")).version;
const PEERS = ["@jscad/modeling", "manifold-3d", "fflate"];
const about = {
  machine: `${cpus().length} × ${cpus()[0].model.trim()}, ${(totalmem() / 2 ** 30).toFixed(0)} GiB, ${platform()} ${arch()}`,
  before: await lookAtMachine(),
  versions: Object.fromEntries([
    ["node", process.version.slice(1)],
    ["lamplane", versionIn("packages/cli")],
    ...PEERS.map((name) => [name, versionIn(`node_modules/${name}`)]),
  ]),
  corpus: EXAMPLES.map(({ name }) => name),
  method: `Warmed up, then the contenders of a group in turn, in an order that rotates, ${LEAST_REPETITIONS} times or more (fewer where it is said). Median, low and high of the wall clock. A multiple is of the median marked 1.`,
};

const told = (text) => {
  if (!json) console.log(text);
};
told(heading(about));
const base = commit && { commit, ...buildAt(commit) };
const results = [];
try {
  for (const { file, name } of subjects) {
    const { title, measured } = await import(`./${file}`);
    told(`\n${title}\n${"=".repeat(title.length)}`);
    const groups = await measured({ long: options.includes("--long"), base });
    results.push({ subject: name, title, groups });
    for (const group of groups) told(groupText(group));
  }
} finally {
  base?.remove();
}
const after = await lookAtMachine();
told(`\nafter     ${quietText(after)}`);
if (json) console.log(JSON.stringify({ ...about, after, unit: "ms", results }, null, 2));

function heading({ machine, before, versions, corpus, method }) {
  const lines = [
    ["machine", machine],
    ["before", quietText(before)],
    [
      "versions",
      Object.entries(versions)
        .map((pair) => pair.join(" "))
        .join(", "),
    ],
    ["corpus", corpus.join(", ")],
    ["method", method],
  ];
  return lines.map(([what, text]) => `${what.padEnd(9)} ${text}`).join("\n");
}

function groupText({ of, rows, rate, floor, notes = [] }) {
  const unit = rows.find(({ what }) => what === floor)?.median;
  const width = Math.max(44, ...rows.map(({ what }) => what.length));
  const head = `${"".padEnd(width)}${"median".padStart(11)}${"low".padStart(11)}${"high".padStart(11)}   runs${unit ? "   multiple" : ""}${rate ? `   ${rate}/s` : ""}`;
  const lines = rows.map((row) => `${row.what.padEnd(width)}${"median" in row ? rowText(row, rate, unit) : ""}`);
  return `\n${of}\n${[head, ...lines].map((line) => `  ${line}`).join("\n")}${notes.map((note) => `\n  ${note}.`).join("")}`;
}

function rowText({ median, low, high, repetitions, each }, rate, unit) {
  const times = [median, low, high].map((ms) => `${figures(ms)} ms`.padStart(11)).join("");
  return `${times}${String(repetitions).padStart(7)}${unit ? (median / unit).toFixed(1).padStart(11) : ""}${rate && each ? `   ${grouped((1000 * each) / median)}` : ""}`;
}

/** Three figures that mean something, whatever the size. */
function figures(ms) {
  return ms >= 100 ? ms.toFixed(0) : ms >= 10 ? ms.toFixed(1) : ms >= 1 ? ms.toFixed(2) : ms.toFixed(4);
}

function grouped(value) {
  return Number(value.toPrecision(3)).toLocaleString("en").replaceAll(",", " ");
}
