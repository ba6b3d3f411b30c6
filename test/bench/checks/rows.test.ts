// Laws that every row of a check keeps, whatever it judges; limits worked by hand stand in limits.test.ts, remedies' ways in remedies.test.ts.

import { checkDescriptions, noteDescriptions } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { CHECKS, judgeChecks } from "../../../packages/bench/src/checks/judgements.ts";
import { ADVICE } from "../../../packages/bench/src/words/advice.ts";
import { SUBJECTS } from "../../../packages/bench/src/words/subjects.ts";
import { designWith, randomDesigns } from "../../support/designs.ts";

const rows = CHECKS.map((row) => [`${row.code}: ${row.advice}`, row] as const);
const planes = [designWith({ "body.outline": "arched", "ramp.shape": "curved" }), ...designs(40)].map(elevation);
function designs(count: number) {
  return randomDesigns(31, count, () => true).map(({ design }) => design);
}

test.each(rows)("%s: parameters and remedies are the table's, each once, and no remedy moves a word", (_, row) => {
  expect(row.parameters.length).toBeGreaterThan(0);
  for (const parameter of row.parameters) expect(rowAt(parameter), parameter).toBeDefined();
  expect(new Set(row.parameters).size).toBe(row.parameters.length);
  const ways = row.remedies.map(({ parameter, toward }) => `${parameter} ${toward}`);
  expect(new Set(ways).size).toBe(ways.length);
  for (const { parameter } of row.remedies) expect(rowAt(parameter).kind, parameter).toBe("number");
});

test.each(rows)("%s: it lies at a point of the drawing, and has a source, a unit and a limit", (_, row) => {
  const [first] = planes;
  expect(Object.keys(first!.points)).toContain(row.place);
  expect(row.source).toMatch(/^(common practice|plane geometry|Wood Handbook|engineering estimate)/);
  expect(["mm", "°", "×", "%", ""]).toContain(row.unit);
  expect(row.stop ?? row.warn).toBeDefined();
});

test("a code's rows follow one another, and no two rows are the same check of the same value", () => {
  const codes = CHECKS.map(({ code }) => code);
  expect(codes.filter((code, i) => code !== codes[i - 1]).length).toBe(new Set(codes).size);
  for (const plane of planes) {
    const named = CHECKS.map(
      ({ code, subject }) => `${code} ${typeof subject === "string" ? subject : subject(plane)}`,
    );
    expect(new Set(named).size).toBe(named.length);
  }
});

test("every code is judged once of a plane, and what is found names a subject and an advice that have words", () => {
  for (const plane of planes) {
    const judged = judgeChecks(plane).filter(
      ({ severity, code }) => severity !== "note" && !code.endsWith("-print-size"),
    );
    const codes = judged.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const { subject, advice, relation } of judged) {
      expect(SUBJECTS).toHaveProperty(subject);
      expect(ADVICE).toHaveProperty(advice!);
      expect(["at least", "at most"]).toContain(relation);
    }
  }
});

test("whatever is judged of a plane, its notes and jigs too, is described by its code", () => {
  const described = new Set([...checkDescriptions(), ...noteDescriptions()].map(({ code }) => code));
  const odd = [
    { "wood.body": "hard maple", "wood.pin": "ipe", "wood.wedge": "nowhere" },
    { "wood.body": "lignum vitae", "wood.dampest.humidity": 95, "wood.rings": 0 },
    { "body.height": 36, "body.length": 120, "iron.width": 32, "iron.thickness": 3 },
    { "capIron.thickness": 0 },
  ].map((changes) => elevation(designWith(changes)));
  const codes = new Set([...planes, ...odd].flatMap((plane) => judgeChecks(plane).map(({ code }) => code)));
  expect([...codes].filter((code) => !described.has(code))).toEqual([]);
  expect(
    [...codes].filter((code) => /^wood-|^moisture|^sole-cup|-jig$|-print-size$/.test(code)).length,
  ).toBeGreaterThan(8);
});
