// Writes what the documents derive from elsewhere: the table of parameters, the editors' schema, the reference, and what comes with the packages.
import { readFileSync, writeFileSync } from "node:fs";
import { designSchema, parameterTable } from "@lamplane/parameters/design";
import { apiTexts } from "./api-docs.js";
import { pageThirdPartyText, thirdPartyText } from "./third-party.js";

const PARAMETERS = new URL("../../packages/parameters/parameters.md", import.meta.url);
const SCHEMA = new URL("../../examples/design.schema.json", import.meta.url);
const [BEGIN, END] = ["<!-- parameters: written by `pnpm run docs` -->", "<!-- end of parameters -->"];

/** The page of parameters with its table made anew. */
function pageWith(table, page) {
  const [before, rest] = [page.slice(0, page.indexOf(BEGIN)), page.slice(page.indexOf(END))];
  return `${before}${BEGIN}\n\n${table.trim()}\n\n${rest}`;
}

writeFileSync(PARAMETERS, pageWith(parameterTable(), readFileSync(PARAMETERS, "utf8")));
writeFileSync(SCHEMA, `${JSON.stringify(designSchema(), null, 2)}\n`);
writeFileSync(new URL("../../packages/cli/THIRD-PARTY.md", import.meta.url), thirdPartyText());
writeFileSync(new URL("../../packages/viewer/THIRD-PARTY.md", import.meta.url), pageThirdPartyText());
for (const { path, text } of apiTexts()) writeFileSync(new URL(`../../${path}`, import.meta.url), text);
