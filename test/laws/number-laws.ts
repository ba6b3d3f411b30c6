// Random designs through every figure and check: numbers only, no crash. Few in every run, many in the long one.
import { asBuiltDesign, buildState, figuresAsBuilt } from "@lamplane/bench";
import { checkWithoutCures, findingSentence } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import { type Design, isRow, LIST_NAMES, type Row, TABLE, type TableSection } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { randomDesigns, seeded } from "../support/designs.ts";

function judged(design: Design): number {
  const plane = elevation(asBuiltDesign(design));
  const figures = figuresAsBuilt(design);
  for (const { key, value } of figures) if (!Number.isFinite(value)) throw new Error(`${key} is ${value}`);
  const findings = checkWithoutCures(plane);
  for (const finding of findings) {
    const { code, value, limit } = finding;
    const message = findingSentence(plane.design, finding);
    if (!Number.isFinite(value) || !Number.isFinite(limit) || /NaN|undefined|Infinity/.test(message))
      throw new Error(`${code}: ${value}, ${limit}: ${message}`);
  }
  return figures.length + findings.length;
}

/** A design without boards, cutters or sheets. */
const NO_LISTS: object = Object.fromEntries(LIST_NAMES.map((name) => [name, []]));

/** The laws as tests. @param plausible how many of designs as one would draw them @param anywhere how many within the limits */
export function testNumberLaws(seed: number, { plausible, anywhere }: { plausible: number; anywhere: number }): void {
  test(`${plausible} plausible designs`, () => {
    let seen = 0;
    for (const { design } of randomDesigns(seed, plausible)) seen += judged(design);
    expect(seen).toBeGreaterThan(plausible * 30);
  });

  test(`${anywhere} designs with every number anywhere within its limits, half of them measured`, () => {
    const random = seeded(seed + 1);
    for (let n = 0; n < anywhere; n++) {
      const design = { ...NO_LISTS, ...anyDesign(TABLE, random, n % 2 === 1) } as Design;
      try {
        judged(design);
        if (n % 10 === 1 && /NaN|null/.test(JSON.stringify(buildState(design)))) throw new Error("bench state");
      } catch (error) {
        throw new Error(JSON.stringify(design), { cause: error });
      }
    }
  });
}

function anyDesign(section: TableSection, random: () => number, measured: boolean): object {
  const entries = Object.entries(section).map(([key, entry]): [string, unknown] => [
    key,
    isRow(entry) ? anyValue(entry, random, measured) : anyDesign(entry, random, measured),
  ]);
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

function anyValue(row: Row, random: () => number, measured: boolean): number | string | undefined {
  if (row.kind === "text") return row.default;
  if (row.kind === "choice") return row.choices[Math.floor(random() * row.choices.length)]!;
  if (row.kind === "lengths")
    return random() < 0.5
      ? row.words[Math.floor(random() * row.words.length)]!
      : Array.from({ length: 1 + Math.floor(random() * 5) }, () => `${row.min + random() * 30} mm`).join(" + ");
  if (row.unset && !(measured && random() < 0.5)) return undefined;
  if (row.auto !== undefined && random() < 0.5) return "auto";
  const value = row.min + random() * (row.max - row.min);
  return row.quantity === "count" ? Math.round(value) : value;
}
