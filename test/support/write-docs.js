// Writes what the documents derive from elsewhere: the README's table, the editors' schema, and what comes with the packages.
import { readFileSync, writeFileSync } from "node:fs";
import { designSchema, parameterTable } from "@lamplane/parameters/design";
import { thirdPartyText } from "./third-party.js";

const README = new URL("../../README.md", import.meta.url);
const SCHEMA = new URL("../../examples/design.schema.json", import.meta.url);
const [BEGIN, END] = ["<!-- parameters: written by `pnpm docs` -->", "<!-- end of parameters -->"];

/** The README with its table made anew. */
function readmeWith(table, readme) {
  const [before, rest] = [readme.slice(0, readme.indexOf(BEGIN)), readme.slice(readme.indexOf(END))];
  return `${before}${BEGIN}\n\n${table.trim()}\n\n${rest}`;
}

writeFileSync(README, readmeWith(parameterTable(), readFileSync(README, "utf8")));
writeFileSync(SCHEMA, `${JSON.stringify(designSchema(), null, 2)}\n`);
writeFileSync(new URL("../../THIRD-PARTY.md", import.meta.url), thirdPartyText());
