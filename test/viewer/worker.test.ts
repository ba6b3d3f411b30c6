// The worker answers every question, also one that comes before any text could be opened.
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { WorkerRequest, WorkerResponse } from "../../packages/viewer/src/protocol.ts";

const answers: WorkerResponse[] = [];
const scope = {
  postMessage: (answer: WorkerResponse) => void answers.push(answer),
  onmessage: undefined as ((event: { data: WorkerRequest }) => void) | undefined,
};
beforeAll(async () => {
  vi.stubGlobal("self", scope);
  await import("../../packages/viewer/src/worker/worker.ts");
});
afterAll(() => vi.unstubAllGlobals());

test.each(["plane", "solid", "cures", "written"] as const)("%s, asked while nothing is open", (kind) => {
  answers.length = 0;
  scope.onmessage!({ data: { kind, requestId: 7, base: 1, changes: [], stage: "shaped" } });
  expect(answers).toEqual([{ kind: "skipped", requestId: 7 }]);
});
