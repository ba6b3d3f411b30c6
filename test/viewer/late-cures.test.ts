// Cures come from a worker of their own: those that are there before their notes are put on them, and never on others.
import { afterAll, beforeAll, beforeEach, expect, test, vi } from "vitest";

/** By its path alone: its types are the page's, which only the page's own project knows. */
const MODULE = "../../packages/viewer/src/page/drawing-view.ts";
interface View {
  drawPlane(plane: unknown, requestId: number): void;
  showWords(words: unknown, stage: string, requestId: number): void;
  addCures(findings: readonly unknown[], requestId: number): void;
}
let DrawingView: new (parts: unknown, timer: unknown) => View;

/** What is done to the notes, in turn. */
let turns: string[] = [];
const nothing = () => {};
const parts = {
  fields: { elevation: { scale: () => undefined } },
  iron: { show: nothing },
  measure: { show: nothing },
  schedule: { show: nothing },
  steps: { show: nothing },
  title: { show: nothing },
  sheet: { offsetHeight: 0 },
  notes: {
    announce: nothing,
    show: ({ passed }: { passed: string }) => turns.push(`notes ${passed}`),
    addCures: (cures: readonly { code: string }[]) => turns.push(`cures ${cures.map(({ code }) => code).join()}`),
  },
};
const plane = { views: [], design: { name: "smoother", bed: { angle: 47 }, wood: { body: "beech" } } };
const notesOf = (name: string) => ({ passed: name });
const curesOf = (code: string) => [{ code, cure: [] }];

beforeAll(async () => {
  vi.stubGlobal("window", globalThis);
  vi.stubGlobal("innerHeight", 900);
  vi.stubGlobal("OPENING_PLANE", ""); // the build writes it into the page
  vi.stubGlobal("document", { title: "", documentElement: { dataset: { wood: "beech" } } });
  ({ DrawingView } = await import(MODULE));
});
afterAll(() => vi.unstubAllGlobals());
beforeEach(() => {
  turns = [];
});

const opened = () => {
  const view = new DrawingView(parts, { finish: nothing });
  view.drawPlane(plane, 1);
  view.showWords(notesOf("first"), "first-shaving", 1);
  view.drawPlane(plane, 2);
  return view;
};

test("cures that come before their notes stand on them", () => {
  const view = opened();
  view.addCures(curesOf("mouth"), 2);
  view.showWords(notesOf("second"), "first-shaving", 2);
  expect(turns.slice(turns.indexOf("notes second"))).toEqual(["notes second", "cures mouth"]);
});

test("cures that come after their notes stand on them", () => {
  const view = opened();
  view.showWords(notesOf("second"), "first-shaving", 2);
  view.addCures(curesOf("mouth"), 2);
  expect(turns).toEqual(["notes first", "notes second", "cures mouth"]);
});

test("cures of an earlier change are not put on later notes", () => {
  const view = opened();
  view.addCures(curesOf("mouth"), 1);
  view.showWords(notesOf("second"), "first-shaving", 2);
  expect(turns.slice(turns.indexOf("notes second"))).toEqual(["notes second"]);
});
