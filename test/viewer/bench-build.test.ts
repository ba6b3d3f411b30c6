// What the bench screens show and take is what `next` prints and `measured` writes, and they ask where it refuses.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Design, readDesign } from "@lamplane/parameters/design";
import { travellerSteps } from "@lamplane/sheets";
import { afterAll, expect, test } from "vitest";
import type { BenchAnswer, BenchBuild } from "../../packages/viewer/src/protocol/bench-build.ts";
import { answerBench } from "../../packages/viewer/src/worker/bench-build.ts";
import { runCommand } from "../support/running.ts";

const folder = mkdtempSync(join(tmpdir(), "lamplane-screens-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const WIDTH = 80; // mm of a step's drawing, on a phone
const SMOOTHER = readFileSync("examples/apprentice-smoother.yaml", "utf8");
const MEASURED = `${SMOOTHER}\nmeasured: { ironThickness: 3.55, coreWidth: 49.2, cheekThickness: 7.8, rampAngle: 60.5 }\n`;

function designIn(text: string): Design {
  const reading = readDesign(text, "");
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

function built(answer: BenchAnswer): BenchBuild {
  if (answer.kind !== "build") throw new Error(JSON.stringify(answer));
  return answer.build;
}

async function next(text: string): Promise<string> {
  const file = join(folder, "plane.yaml");
  writeFileSync(file, text);
  return (await runCommand("next", file)).out;
}

test("the step to do, its numbers, what changed and what was not measured are those of `next` and the traveller", async () => {
  const build = built(answerBench(MEASURED, "plane.yaml", WIDTH));
  const out = await next(MEASURED);
  const now = build.screens.find(({ key }) => key === build.next)!;
  expect(out).toContain(`step ${build.screens.indexOf(now) + 1} of ${build.screens.length}: ${now.title}\n${now.task}`);
  const { news } = build;
  expect(out).toContain(`What "${news!.from}" changed:`);
  for (const { name, came, costs } of news!.values)
    for (const words of [`${name}: ${came}`, ...costs]) expect(out).toContain(words);
  expect(news!.moved.length).toBeGreaterThan(0);
  for (const moved of news!.moved)
    expect(out).toMatch(new RegExp(`${moved.name} +${moved.now}, planned ${moved.planned}`));
  expect(build.earlier.map(({ name }) => name)).toEqual(["iron thickness", "core width", "cheek thickness"]);
  for (const { name } of build.earlier) expect(out).toContain(`  ${name}`);
  expect(out).toContain(`Not measured; planned value kept: ${build.unread}.`);
  const steps = travellerSteps(designIn(MEASURED));
  expect(build.screens.map(({ title, numbers }) => ({ title, numbers }))).toEqual(
    steps.map(({ title, numbers }) => ({ title, numbers })),
  );
  expect(build.screens.map(({ cautions }) => cautions)).toEqual(
    steps.map(({ cautions }) => cautions.map(({ text }) => text)),
  );
});

test("what is entered is written as `measured` writes it, and taken back to the same bytes", async () => {
  const entered = built(answerBench(SMOOTHER, "", WIDTH, { path: "measured.ironThickness", value: 3.65 })).text;
  const file = join(folder, "by-command.yaml");
  writeFileSync(file, SMOOTHER);
  await runCommand("measured", file, "ironThickness=3.65");
  expect(entered).toBe(readFileSync(file, "utf8"));
  const back = built(answerBench(entered, "", WIDTH, { path: "measured.ironThickness", value: undefined })).text;
  await runCommand("measured", file, "ironThickness=");
  expect(back).toBe(readFileSync(file, "utf8"));
});

test.each([
  ["a slip", { path: "measured.ironThickness", value: 9 }, "doubt"],
  ["the same once it is confirmed", { path: "measured.ironThickness", value: 9, isConfirmed: true }, "build"],
  ["more than the table allows", { path: "measured.ironThickness", value: 36 }, "refused"],
  ["what this plane does not have", { path: "measured.ironThicknessAtTop", value: 3 }, "refused"],
  ["a step that passes over others", { path: "measured.done", value: "cuts" }, "skips"],
  ["the same once they are done", { path: "measured.done", value: "cuts", isConfirmed: true }, "build"],
] as const)("%s", (_, entry, kind) => {
  const answer = answerBench(SMOOTHER, "plane.yaml", WIDTH, entry);
  expect(answer.kind).toBe(kind);
  if (answer.kind === "skips") expect(answer.titles).toEqual(["Measure the iron", "Saw and mill core and cheeks"]);
});

test("a step with one of its two values read is done, and not complete", () => {
  const { screens } = built(answerBench(`${SMOOTHER}\nmeasured: { ironThickness: 3.6 }\n`, "", WIDTH));
  expect(screens.find(({ key }) => key === "iron")).toMatchObject({ isDone: true, isComplete: false });
});

test("a mouth that is not yet as wide as wanted is no step that is done; an optional reading leaves nothing missing", () => {
  const [least, wanted] = [0.05, 0.15].map((seen) => {
    const text = `${SMOOTHER}\nmeasured: { done: sole, mouthSeen: ${seen} }\n`;
    return built(answerBench(text, "", WIDTH)).screens.find(({ key }) => key === "mouth")!;
  });
  expect(least).toMatchObject({ isDone: false, isComplete: false });
  expect(wanted).toMatchObject({ isDone: true, isComplete: true });
  expect(wanted!.blanks.filter(({ value }) => value === undefined).length).toBe(2);
});

test("what is no design is refused, so is one whose steps cannot be drawn; one that fails is shown with what fails", () => {
  expect(answerBench("iron: 3\n", "plane.yaml", WIDTH).kind).toBe("refused");
  const answer = (more: string) => answerBench(`iron: { width: 48, thickness: 3.6 }\n${more}\n`, "plane.yaml", WIDTH);
  expect(answer("mouth: { fromToe: 20 }")).toEqual({
    kind: "refused",
    words: [expect.stringMatching(/^Front block length along top/)],
  });
  expect(built(answer("body: { height: 30 }")).stops).toContainEqual(expect.stringMatching(/^Wood above pin hole/));
});
