// What `pnpm mutants` puts faults into, and the quick tests that are meant to see them. Sentences (`words/`) have readers, not mutants.
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** @typedef {{ name: string, sources: readonly string[], tests: RegExp }} Group folders below `packages/`, and the test files by their path */

const inside = (folder, ...names) => names.map((name) => `${folder}/src/${name}`);

/** @type {readonly Group[]} */
export const GROUPS = [
  {
    name: "geometry",
    sources: ["geometry/src"],
    tests: /^test\/(geometry|outside|parameters\/(elevation|solids))\//,
  },
  {
    name: "parameters: elevation",
    sources: inside("parameters", "elevation"),
    tests: /^test\/(outside\/|parameters\/elevation\/|laws\/(figures|transforms))/,
  },
  {
    name: "parameters: reading a design",
    sources: inside("parameters", "design", "yaml", "units", "roster", "wood"),
    tests: /^test\/(outside\/|parameters\/(design|yaml|roster|wood|[^/]+$))/,
  },
  {
    name: "parameters: solids and jigs",
    sources: inside("parameters", "jigs", "solids", "drawings"),
    tests: /^test\/(parameters\/(jigs|solids|drawings)|laws\/(jig|solids|filling|flat-drawings)|export\/same-outline)/,
  },
  { name: "bench: checks", sources: inside("bench", "checks"), tests: /^test\/bench\/checks\// },
  {
    name: "bench: history",
    sources: inside("bench", "history"),
    tests: /^test\/(bench\/(history\/|measured-values)|laws\/measured-histories)/,
  },
  {
    name: "bench: survey and tolerance",
    sources: inside("bench", "survey", "tolerance"),
    tests: /^test\/bench\/(survey|tolerance)\//,
  },
  {
    name: "bench: hold, strength, seasons, mouth",
    sources: inside("bench", "mouth", "strength", "seasons", "figures"),
    tests: /^test\/(outside\/|bench\/[^/]+$)/,
  },
  {
    name: "bench: stock, boards, class",
    sources: inside("bench", "stock", "boards", "class"),
    tests: /^test\/(bench\/(stock|boards|class)\/|cli\/(stock|boards|class)\.)/,
  },
  { name: "sheets", sources: ["sheets/src"], tests: /^test\/sheets\// },
  { name: "export", sources: ["export/src"], tests: /^test\/export\// },
  { name: "cli", sources: ["cli/src"], tests: /^test\/(cli|faults)\// },
  { name: "viewer", sources: ["viewer/src"], tests: /^test\/viewer\// },
];

const filesBelow = (folder, ending) =>
  readdirSync(`${ROOT}${folder}`, { recursive: true })
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => `${folder}/${name}`);

/** The TypeScript sources of a group, sentences left out; paths from the root. */
export const sourcesOf = ({ sources }) =>
  sources.flatMap((folder) => filesBelow(`packages/${folder}`, ".ts")).filter((file) => !file.includes("/words/"));

/** The test files of a group, paths from the root; the long ones take too long for one mutant after another. */
export const testsOf = ({ tests }) =>
  filesBelow("test", ".test.ts").filter((file) => tests.test(file) && !file.includes(".long."));
