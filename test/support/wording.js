// Every sentence that a package can print, from its `words` door, each with its examples filled in: to be read from end to end.
import * as bench from "@lamplane/bench/words";
import * as cli from "@lamplane/cli/words";
import * as exported from "@lamplane/export/words";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import * as parameters from "@lamplane/parameters/words";
import * as sheets from "@lamplane/sheets/words";
import { runnerImport } from "vite";

/** The page's sentences stand in TypeScript alone, which Vite bundles. */
const { module: viewer } = await runnerImport("./packages/viewer/src/words/index.ts", {
  configFile: false,
  logLevel: "error",
});

/** Words of parameters, which stand in the table's rows. */
const ROWS = Object.fromEntries(rowsOf(TABLE).map(({ path, row }) => [path, [row.name, row.help, row.auto ?? ""]]));

/** By package. A package that begins to speak adds its door here. */
const SPEAKERS = { parameters: { PARAMETERS: ROWS, ...parameters }, bench, sheets, export: exported, cli, viewer };

/** What makes sentences of others and has none of its own. */
const MAKERS = new Set([parameters.sentence, parameters.countText, parameters.listText, parameters.numberSpans]);

/** Sentences of one export with their keys. @throws Error for a function without examples: its sentence would not be listed */
export function sentencesOf(key, words) {
  if (MAKERS.has(words)) return [];
  if (typeof words === "string") return words === "" ? [] : [[key, words]];
  if (typeof words === "function") {
    if (!words.examples?.length) throw new Error(`${key} makes a sentence and has no example of it`);
    return words.examples.map((example) => [key, words(example)]);
  }
  return Object.entries(words).flatMap(([inner, each]) =>
    sentencesOf(Array.isArray(words) ? key : `${key}.${inner}`, each),
  );
}

const cell = (text) => text.trim().replaceAll("|", "\\|").replaceAll("\n", "<br>");

/** The page of one package. */
function pageOf(name, exports) {
  const inOrder = Object.entries(exports).sort(([a], [b]) => (a < b ? -1 : 1));
  const sections = inOrder.flatMap(([key, words]) => {
    const rows = sentencesOf(key, words);
    return rows.length === 0
      ? []
      : [["| key | sentence |", "| --- | --- |", ...rows.map((row) => `| ${row.map(cell).join(" | ")} |`)].join("\n")];
  });
  const head = `# Wording of ${name}\n\nEvery sentence of this package with an example filled in. Written by \`pnpm run docs\` from \`src/words/\`.`;
  return `${[head, ...sections].join("\n\n")}\n`;
}

/** Every wording.md with its path. */
export const wordingTexts = () =>
  Object.entries(SPEAKERS).map(([name, exports]) => ({
    path: `packages/${name}/wording.md`,
    text: pageOf(name, exports),
  }));
