// The workers as the page uses them: the newest request wins, and a text that is requested always comes, or why it does not.
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import type { WorkerRequest, WorkerResponse } from "../../packages/viewer/src/protocol/messages.ts";
import { startEngine } from "../../packages/viewer/src/state/engine.ts";

class FakeWorker {
  static all: FakeWorker[] = [];
  readonly sent: WorkerRequest[] = [];
  onmessage: ((event: { data: WorkerResponse }) => void) | null = null;
  constructor() {
    FakeWorker.all.push(this);
  }
  postMessage(request: WorkerRequest) {
    this.sent.push(request);
  }
  respond(data: WorkerResponse) {
    this.onmessage?.({ data });
  }
}

const widths = () => ({ plots: 100, step: 100 });
const query = { base: 1, changes: [], stage: "shaped" } as const;
const started = async () => {
  const heard: WorkerResponse[] = [];
  const engine = startEngine(
    (response) => heard.push(response),
    () => new FakeWorker() as unknown as Worker,
    async () => new FakeWorker() as unknown as Worker,
  );
  engine.open(1, "text", "plane.yaml");
  return { engine, heard, drawing: FakeWorker.all[0]!, patient: () => FakeWorker.all[2]! };
};
const planesSent = ({ sent }: FakeWorker): number[] =>
  sent.filter(({ kind }) => kind === "plane").map(({ requestId }) => requestId);

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
  vi.clearAllTimers();
});

test("of the requests that come while the worker is busy only the last is sent", async () => {
  const { engine, drawing } = await started();
  const [first, , last] = [1, 2, 3].map(() => engine.show(query, widths));
  expect(planesSent(drawing)).toEqual([first]);
  drawing.respond({ kind: "text-refused", base: 1, requestId: drawing.sent[0]!.requestId, faults: [] }); // the sheet is still to come
  expect(planesSent(drawing)).toEqual([first]);
  drawing.respond({ kind: "skipped", requestId: first! });
  expect(planesSent(drawing)).toEqual([first, last]);
});

test("what may take its time is not fetched before the first sheet is drawn", async () => {
  const { engine, drawing, patient } = await started();
  const request = engine.show(query, widths);
  await vi.advanceTimersByTimeAsync(5000);
  expect(patient()).toBeUndefined();
  drawing.respond({ kind: "skipped", requestId: request });
  await vi.advanceTimersByTimeAsync(0);
  expect(patient().sent.map(({ kind }) => kind)).toEqual(["open", "cures", "guide", "plots"]);
});

describe("a text that is requested", () => {
  test("is given to the one who asked", async () => {
    const { engine, patient } = await started();
    const [one, two] = [engine.text(query), engine.text({ ...query, stage: "cuts" })];
    await vi.advanceTimersByTimeAsync(0);
    const [, a, b] = patient().sent;
    patient().respond({ kind: "written", requestId: b!.requestId, text: "two" });
    patient().respond({ kind: "written", requestId: a!.requestId, text: "one" });
    expect(await Promise.all([one, two])).toEqual(["one", "two"]);
  });
  test.each<[string, (requestId: number) => WorkerResponse]>([
    ["of another design", (requestId) => ({ kind: "skipped", requestId })],
    ["of a refused design", (requestId) => ({ kind: "refused", requestId, base: 1, faults: [] })],
    ["that our bug keeps back", (requestId) => ({ kind: "bug", requestId, message: "ours" })],
  ])("%s is refused, so that nobody waits for it", async (_, response) => {
    const { engine, patient } = await started();
    const text = engine.text(query);
    await vi.advanceTimersByTimeAsync(0);
    patient().respond(response(patient().sent.at(-1)!.requestId));
    await expect(text).rejects.toThrow(/ask again/);
  });
  test("is refused where the worker's script is missing, and asked for anew the next time", async () => {
    let fetches = 0;
    const engine = startEngine(
      () => {},
      () => new FakeWorker() as unknown as Worker,
      async () => {
        fetches += 1;
        if (fetches === 1) throw new Error("guide.js is missing");
        return new FakeWorker() as unknown as Worker;
      },
    );
    await expect(engine.text(query)).rejects.toThrow(/guide\.js is missing/);
    const again = engine.text(query);
    await vi.advanceTimersByTimeAsync(0);
    const patient = FakeWorker.all.at(-1)!;
    patient.respond({ kind: "written", requestId: patient.sent.at(-1)!.requestId, text: "ours" });
    expect(await again).toBe("ours");
  });
});
