// The workers as the page asks them: the newest question wins, and a text that was asked for always comes, or why it does not.
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import type { WorkerRequest, WorkerResponse } from "../../packages/viewer/src/protocol.ts";
import { startEngine } from "../../packages/viewer/src/state/engine.ts";

class FakeWorker {
  static all: FakeWorker[] = [];
  readonly asked: WorkerRequest[] = [];
  onmessage: ((event: { data: WorkerResponse }) => void) | null = null;
  constructor() {
    FakeWorker.all.push(this);
  }
  postMessage(ask: WorkerRequest) {
    this.asked.push(ask);
  }
  answer(data: WorkerResponse) {
    this.onmessage?.({ data });
  }
}

const question = { base: 1, changes: [], stage: "shaped" } as const;
const started = () => {
  const heard: WorkerResponse[] = [];
  const engine = startEngine(
    (answer) => heard.push(answer),
    () => new FakeWorker() as unknown as Worker,
  );
  engine.open(1, "text", "plane.yaml");
  return { engine, heard, drawing: FakeWorker.all[0]!, patient: () => FakeWorker.all[2]! };
};
const requestIdOf = (ask: WorkerRequest | undefined): number =>
  ask && "requestId" in ask ? ask.requestId : Number.NaN;

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
  expect(drawing.asked.filter(({ kind }) => kind === "plane").map(requestIdOf)).toEqual([first]);
  drawing.answer({ kind: "refused", base: 1, requestId: 0, faults: [] }); // of a text: the question is still open
  expect(drawing.asked.filter(({ kind }) => kind === "plane")).toHaveLength(1);
  drawing.answer({ kind: "skipped", requestId: first! });
  expect(drawing.asked.filter(({ kind }) => kind === "plane").map(requestIdOf)).toEqual([first, last]);
});

describe("a text that is asked for", () => {
  test("is given to the one who asked", async () => {
    const { engine, patient } = started();
    const [one, two] = [engine.text(question), engine.text({ ...question, stage: "core" })];
    const [, a, b] = patient().asked;
    patient().answer({ kind: "written", requestId: requestIdOf(b), text: "two" });
    patient().answer({ kind: "written", requestId: requestIdOf(a), text: "one" });
    expect(await Promise.all([one, two])).toEqual(["one", "two"]);
  });
  test.each<[string, (turn: number) => WorkerResponse]>([
    ["of another design", (turn) => ({ kind: "skipped", requestId: turn })],
    ["of a refused design", (turn) => ({ kind: "refused", requestId: turn, base: 1, faults: [] })],
    ["that our bug keeps back", (turn) => ({ kind: "bug", requestId: turn, message: "ours" })],
  ])("%s is refused, so that nobody waits for it", async (_, answer) => {
    const { engine, patient } = started();
    const text = engine.text(question);
    patient().answer(answer(requestIdOf(patient().asked.at(-1))));
    await expect(text).rejects.toThrow(/ask again/);
  });
});
