// The workers as the page asks them: the newest question wins, and a text that was asked for always comes, or why it does not.
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import type { Answer, Ask } from "../../packages/viewer/src/protocol.ts";
import { startEngine } from "../../packages/viewer/src/state/engine.ts";

class FakeWorker {
  static all: FakeWorker[] = [];
  readonly asked: Ask[] = [];
  onmessage: ((event: { data: Answer }) => void) | null = null;
  constructor() {
    FakeWorker.all.push(this);
  }
  postMessage(ask: Ask) {
    this.asked.push(ask);
  }
  answer(data: Answer) {
    this.onmessage?.({ data });
  }
}

const question = { base: 1, changes: [], stage: "shaped" } as const;
const started = () => {
  const heard: Answer[] = [];
  const engine = startEngine(
    (answer) => heard.push(answer),
    () => new FakeWorker() as unknown as Worker,
  );
  engine.open(1, "text", "plane.yaml");
  return { engine, heard, drawing: FakeWorker.all[0]!, patient: () => FakeWorker.all[2]! };
};
const turnOf = (ask: Ask | undefined): number => (ask && "turn" in ask ? ask.turn : Number.NaN);

beforeAll(() => {
  vi.stubGlobal("window", globalThis);
  vi.useFakeTimers();
});
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
beforeEach(() => {
  FakeWorker.all = [];
});

test("of the questions that come while the worker is busy only the last is asked", () => {
  const { engine, drawing } = started();
  const [first, , last] = [1, 2, 3].map(() => engine.show(question, 100));
  expect(drawing.asked.filter(({ kind }) => kind === "plane").map(turnOf)).toEqual([first]);
  drawing.answer({ kind: "refused", base: 1, turn: 0, faults: [] }); // of a text: the question is still open
  expect(drawing.asked.filter(({ kind }) => kind === "plane")).toHaveLength(1);
  drawing.answer({ kind: "skipped", turn: first! });
  expect(drawing.asked.filter(({ kind }) => kind === "plane").map(turnOf)).toEqual([first, last]);
});

describe("a text that is asked for", () => {
  test("is given to the one who asked", async () => {
    const { engine, patient } = started();
    const [one, two] = [engine.text(question), engine.text({ ...question, stage: "core" })];
    const [, a, b] = patient().asked;
    patient().answer({ kind: "written", turn: turnOf(b), text: "two" });
    patient().answer({ kind: "written", turn: turnOf(a), text: "one" });
    expect(await Promise.all([one, two])).toEqual(["one", "two"]);
  });
  test.each<[string, (turn: number) => Answer]>([
    ["of another design", (turn) => ({ kind: "skipped", turn })],
    ["of a refused design", (turn) => ({ kind: "refused", turn, base: 1, faults: [] })],
    ["that our bug keeps back", (turn) => ({ kind: "bug", turn, message: "ours" })],
  ])("%s is refused, so that nobody waits for it", async (_, answer) => {
    const { engine, patient } = started();
    const text = engine.text(question);
    patient().answer(answer(turnOf(patient().asked.at(-1))));
    await expect(text).rejects.toThrow(/ask again/);
  });
});
