// The worker answers every request, also one that comes before any text could be opened.
import { afterAll, beforeAll, beforeEach, expect, test, vi } from "vitest";
import type { WorkerRequest, WorkerResponse } from "../../packages/viewer/src/protocol/messages.ts";

const responses: WorkerResponse[] = [];
const scope = {
  postMessage: (response: WorkerResponse) => void responses.push(response),
  onmessage: undefined as ((event: { data: WorkerRequest }) => void) | undefined,
};
beforeAll(() => {
  vi.stubGlobal("self", scope);
});
beforeEach(() => {
  vi.resetModules();
});
afterAll(() => vi.unstubAllGlobals());

test.each([
  ["plane", "worker"],
  ["solid", "worker"],
  ["cures", "guide-worker"],
  ["guide", "guide-worker"],
  ["written", "guide-worker"],
] as const)("%s, requested while nothing is open", async (kind, worker) => {
  await import(`../../packages/viewer/src/worker/${worker}.ts`);
  responses.length = 0;
  scope.onmessage!({ data: { kind, width: 100, requestId: 7, base: 1, changes: [], stage: "shaped" } });
  expect(responses).toEqual([{ kind: "skipped", requestId: 7 }]);
});
