// The worker answers every request, also one that comes before any text could be opened.
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { WorkerRequest, WorkerResponse } from "../../packages/viewer/src/protocol/messages.ts";

const responses: WorkerResponse[] = [];
const scope = {
  postMessage: (response: WorkerResponse) => void responses.push(response),
  onmessage: undefined as ((event: { data: WorkerRequest }) => void) | undefined,
};
beforeAll(async () => {
  vi.stubGlobal("self", scope);
  await import("../../packages/viewer/src/worker/worker.ts");
});
afterAll(() => vi.unstubAllGlobals());

test.each(["plane", "solid", "cures", "written"] as const)("%s, requested while nothing is open", (kind) => {
  responses.length = 0;
  scope.onmessage!({ data: { kind, requestId: 7, base: 1, changes: [], stage: "shaped" } });
  expect(responses).toEqual([{ kind: "skipped", requestId: 7 }]);
});
