// Random builds written down by the command: values in any order, far off, taken back, undone, then read with another plan.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expectedValue, history, MEASURED_KEYS, type MeasuredKey, measuringStep, stepIndex } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import { STEP_NAMES, TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { runCommand } from "../support/running.ts";

let folder = "";
let file = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-histories-"));
  file = join(folder, "plane.yaml");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Plans as a maker's files begin: bare, with `measured` in braces, in JSON, in inches with Windows line ends. */
const PLANS = [
  "iron: { width: 48, thickness: 3.6 }\n",
  "# mine\niron: { width: 44, thickness: 3 }\nbed: { angle: 50 }\nmeasured: {} # at the bench\n",
  '{"iron": {"width": 50, "thickness": 4}, "ramp": {"shape": "curved"}, "bed": {"angle": 55}}',
  "\ufeffunits: in\r\niron: { width: 1 3/4, thickness: 1/8 }\r\nmeasured:\r\n",
];

const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** A value within what its row allows, or near what is planned; the second is what hands do. */
const reading = fc.record({
  key: fc.constantFrom(...MEASURED_KEYS),
  place: fc.double({ min: 0, max: 1, noNaN: true }),
  isWild: fc.boolean(),
});
const action = fc.oneof(
  { weight: 6, arbitrary: reading.map((each) => ({ kind: "measure" as const, ...each })) },
  { weight: 1, arbitrary: fc.constantFrom(...STEP_NAMES).map((step) => ({ kind: "done" as const, step })) },
  { weight: 2, arbitrary: fc.nat(30).map((nth) => ({ kind: "take back" as const, nth })) },
  { weight: 2, arbitrary: fc.constant({ kind: "undo" as const }) },
);
type Action = typeof action extends fc.Arbitrary<infer A> ? A : never;

/** What the maker has measured, by the test's own books. */
type Books = ReadonlyMap<string, number | string>;

function designOf(source: string) {
  const read = readDesign(source, "plane.yaml");
  if (!read.ok) throw new Error("a plan is sound");
  return read.design;
}

/** What is typed for an action, and the books after it; undefined where the books know nothing to take back. */
function typedAction(act: Exclude<Action, { kind: "undo" }>, text: string, books: Books) {
  if (act.kind === "done") return { typed: `done=${act.step}`, after: new Map(books).set("done", act.step) };
  if (act.kind === "take back") {
    const key = [...books.keys()][act.nth % Math.max(1, books.size)];
    if (key === undefined) return undefined;
    const after = new Map(books);
    after.delete(key);
    return { typed: `${key}=`, after };
  }
  const design = designOf(text);
  const expected = expectedValue(design, act.key);
  const { min, max } = TABLE.measured[act.key];
  const near = Math.min(max, Math.max(min, (expected ?? min) + act.place - 0.5));
  const value = hundredths(act.isWild ? min + act.place * (max - min) : near);
  const unit = TABLE.measured[act.key].quantity === "length" ? " mm" : "";
  return { typed: `${act.key}=${value}${unit}`, after: new Map(books).set(act.key, value) };
}

/** Keys and values under `measured`, read by the general library; lengths in mm. */
function stored(text: string, isInInches: boolean): Record<string, number | string> {
  const measured = (parse(text.replace(/^\ufeff/, "")) as { measured?: Record<string, number | string> | null })
    .measured;
  return Object.fromEntries(
    Object.entries(measured ?? {}).map(([key, value]) => {
      if (key === "done") return [key, value];
      const isBare = typeof value === "number";
      const isLength = TABLE.measured[key as MeasuredKey].quantity === "length";
      const figure = isBare ? value : Number.parseFloat(value);
      return [key, hundredths(isBare && isLength && isInInches ? figure * 25.4 : figure)];
    }),
  );
}

const doneCount = (books: Books): number =>
  Math.max(
    0,
    ...[...books].map(([key, value]) =>
      key === "done"
        ? STEP_NAMES.indexOf(value as (typeof STEP_NAMES)[number]) + 1
        : stepIndex(measuringStep(key as MeasuredKey)) + 1,
    ),
  );

/** The first step not done, by the books; a mouth that was read is done only once it is as wide as wanted. */
function firstOpenStep(books: Books, opening: number): string | undefined {
  const count = doneCount(books);
  const seen = books.get("mouthSeen");
  const isMouthLast = count === STEP_NAMES.indexOf("mouth") + 1 && books.get("done") !== "mouth";
  if (!isMouthLast || typeof seen !== "number") return STEP_NAMES[count];
  return opening - seen > 0.005 ? "mouth" : "shaping"; // half of a hundredth is not seen
}

/** @param runs how many random builds */
export function testHistories(runs: number): void {
  test(`${runs} random histories: nothing is stored that was not measured, undo brings back every byte, next names the first open step`, async () => {
    let [written, refused, undone] = [0, 0, 0];
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...PLANS),
        fc.array(action, { minLength: 2, maxLength: 7 }),
        fc.constantFrom(...PLANS),
        async (plan, actions, other) => {
          writeFileSync(file, plan);
          let books: Books = new Map();
          let before: { text: string; books: Books } | undefined;
          for (const act of actions) {
            const text = readFileSync(file, "utf8");
            if (act.kind === "undo") {
              const { exit } = await runCommand("measured", file, "--undo");
              expect(exit).toBe(before === undefined ? 2 : 0);
              expect(readFileSync(file, "utf8")).toBe(before?.text ?? text);
              if (before) undone += 1;
              books = before?.books ?? books;
              before = undefined;
              continue;
            }
            const asked = typedAction(act, text, books);
            if (!asked) continue;
            const { exit, err } = await runCommand("measured", file, asked.typed, "--read-twice", "--skip");
            expect([0, 2], err).toContain(exit);
            if (exit === 2) {
              refused += 1;
              expect(readFileSync(file, "utf8")).toBe(text);
            } else {
              written += 1;
              before = readFileSync(file, "utf8") === text ? undefined : { text, books };
              books = asked.after;
            }
            expect(stored(readFileSync(file, "utf8"), plan.includes("units: in"))).toEqual(Object.fromEntries(books));
          }
          const next = await runCommand("next", file, "--json");
          expect(next, next.err).toMatchObject({ exit: 0, err: "" });
          const { opening } = designOf(plan).mouth;
          expect(JSON.parse(next.out).step).toBe(firstOpenStep(books, opening));
          const measured = designOf(readFileSync(file, "utf8")).measured;
          const records = history({ ...designOf(other), measured });
          expect(records.map(({ step }) => step)).toEqual(STEP_NAMES.slice(0, doneCount(books)));
        },
      ),
      { numRuns: runs, seed: 12 },
    );
    expect(Math.min(written / 500, undone / 50, refused / 10)).toBeGreaterThan(runs / 300);
  });
}
