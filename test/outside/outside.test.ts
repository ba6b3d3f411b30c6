// Every check against something outside the project, run; and the document that lists them, kept current.
import { describe, expect, test } from "vitest";
import { requireProgram } from "../support/outside-programs.ts";
import { type CheckedValue, documentOf, type Outcome, type OutsideCheck, outcomeOf } from "./check.ts";
import { SUBJECTS } from "./subjects.ts";

/** Each check is asked once, for its own test and for the document. */
const asked = new Map<OutsideCheck, Promise<Outcome>>();
function outcome(check: OutsideCheck): Promise<Outcome> {
  const known = asked.get(check) ?? outcomeOf(check);
  asked.set(check, known);
  return known;
}

describe.each(SUBJECTS.map((subject) => [subject.name, subject] as const))("%s", (_, { checks }) => {
  test.for(checks.map((check) => [check.what, check] as const))("%s", async ([, check], context) => {
    if (check.needs) requireProgram(context, check.needs);
    const { theirs, ours, agrees } = await outcome(check);
    expect(agrees, `${check.from}: theirs ${theirs}, ours ${ours}, within ${check.within}`).toBe(true);
  });
});

test("no two rows of a subject are called alike", () => {
  for (const { name, checks } of SUBJECTS) {
    const names = checks.map(({ what }) => what);
    expect(new Set(names).size, name).toBe(names.length);
  }
});

test("test/outside-checks.md is current (`pnpm outside` writes it)", async (context) => {
  for (const { checks } of SUBJECTS) for (const { needs } of checks) if (needs) requireProgram(context, needs);
  const subjects = await Promise.all(
    SUBJECTS.map(async ({ name, checks }) => ({ name, outcomes: await Promise.all(checks.map(outcome)) })),
  );
  expect(subjects.flatMap(({ outcomes }) => outcomes).length).toBeGreaterThan(60);
  await expect(documentOf(subjects)).toMatchFileSnapshot("../outside-checks.md");
});

describe("the checks themselves", () => {
  const row = { what: "it", from: "nowhere", told: "read" as const };
  const agrees = async (theirs: CheckedValue, ours: CheckedValue, more: Partial<OutsideCheck> = {}) =>
    (await outcomeOf({ ...row, theirs, ours: () => ours, ...more })).agrees;

  test("tell what is too far off, no number, and another word", async () => {
    expect(await agrees(2, 2.09, { within: 0.1 })).toBe(true);
    expect(await agrees(2, 2.11, { within: 0.1 })).toBe(false);
    expect(await agrees(200, 215, { within: 0.1, relative: true })).toBe(true);
    expect(await agrees(200, 221, { within: 0.1, relative: true })).toBe(false);
    expect(await agrees(2, Number.NaN, { within: 0.1 })).toBe(false);
    expect(await agrees(2, Number.NaN)).toBe(false);
    expect(await agrees(2, 2.0000001)).toBe(false);
    expect(await agrees("mm", "in")).toBe(false);
    expect(await agrees("2", 2)).toBe(false);
  });
  test("and the document says so", async () => {
    const outcomes = [await outcomeOf({ ...row, theirs: 2, ours: () => 3, within: 0.1 })];
    expect(documentOf([{ name: "Some", outcomes }])).toMatch(/1 do not agree[\s\S]*3\.0 \*\*does not agree\*\*/);
  });
});
