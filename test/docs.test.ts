// What the documents derive from the parameter table is what the table says now; what they tell a reader to run works.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { designSchema, parameterTable, starterDesign } from "@lamplane/parameters/design";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { ran } from "./support/running.ts";

const README = readFileSync("README.md", "utf8");

test("the README's parameter table is current (`pnpm docs` writes it)", () =>
  expect(README).toContain(parameterTable().trim()));

test("the schema beside the examples is current, and every example and starter keeps it", () => {
  const schema = JSON.parse(readFileSync("examples/design.schema.json", "utf8"));
  expect(schema).toEqual(JSON.parse(JSON.stringify(designSchema())));
  const keeps = new Ajv2020({ strict: false }).compile(schema);
  const examples = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
  const texts = [
    ...examples.map((name) => readFileSync(`examples/${name}`, "utf8")),
    starterDesign("a", "mm"),
    starterDesign("b", "in"),
  ];
  for (const text of texts) expect(keeps(parse(text)), JSON.stringify(keeps.errors)).toBe(true);
});

test("every lamplane command that the README tells works, in its order", async () => {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-docs-"));
  const told = [...README.matchAll(/^ {4}lamplane (.+)$/gm)].map(([, line]) =>
    line!
      .split(" # ")[0]!
      .trim()
      .replaceAll("my-plane.yaml", join(folder, "my-plane.yaml"))
      .replace("--out packs", `--out ${folder}`)
      .split(/\s+/),
  );
  expect(told.length).toBeGreaterThan(10);
  try {
    for (const args of told) {
      const { exit, err } = await ran(...args);
      expect({ exit, err }, args.join(" ")).toEqual({ exit: 0, err: "" });
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});
