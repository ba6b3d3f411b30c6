// The worker: every figure, view, mesh and file is computed here, so that the page never waits. One design is held at a time.
import { planeOf } from "@lamplane/bench";
import { checkPlane } from "@lamplane/bench/checks";
import { completeDesign, readDesign, takenBack, withValue, writtenBack } from "@lamplane/parameters/design";
import { type Elevation, FIGURES } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { Answer, Ask, Asked, Change } from "../protocol.ts";
import { partMeshes } from "./meshes.ts";
import { plotsOf } from "./plots.ts";
import { sheetPlane, sheetWords } from "./sheet-plane.ts";

const scope = self as unknown as {
  postMessage(message: Answer, transfer?: ArrayBuffer[]): void;
  onmessage: ((event: { data: Ask }) => void) | null;
};
const answer = (message: Answer, transfer: ArrayBuffer[] = []) => scope.postMessage(message, transfer);

/** The text that was opened last, and the design in it. */
let opened: { base: number; text: string; design: Design } | undefined;
function open({ base, text, file }: Extract<Ask, { kind: "open" }>) {
  const reading = readDesign(text, file);
  if (!reading.ok) return answer({ kind: "refused", turn: 0, base, faults: reading.faults });
  opened = { base, text, design: reading.design };
  return answer({ kind: "opened", base, name: reading.design.name, given: [...reading.given] });
}

/** The design with its changes, once the table has found every value allowed. */
function changed(ask: Asked<string>): Design | undefined {
  if (!opened || opened.base !== ask.base) {
    answer({ kind: "skipped", turn: ask.turn });
    return undefined;
  }
  if (ask.changes.length === 0) return opened.design;
  const wanted = ask.changes.reduce((design, [path, value]) => withValue(design, path, value), opened.design);
  const reading = completeDesign(wanted);
  if (reading.ok) return reading.design;
  answer({ kind: "refused", turn: ask.turn, base: ask.base, faults: reading.faults });
  return undefined;
}

/** The plane that was computed last: sheet, solid and files of one turn share it. */
let last: { turn: number; base: number; design: Design; plane: Elevation } | undefined;

function withPlane(ask: Asked<string>, act: (plane: Elevation, design: Design) => void) {
  if (last?.turn !== ask.turn || last.base !== ask.base) {
    const design = changed(ask);
    if (!design) return;
    last = { turn: ask.turn, base: ask.base, design, plane: planeOf(design) };
  }
  act(last.plane, last.design);
}

function makeSolid(ask: Asked<"solid">) {
  withPlane(ask, (plane) => {
    try {
      const parts = partMeshes(plane, ask.stage);
      const buffers = parts.flatMap(({ corners, edges, section }) => [corners, edges, section]).map((a) => a.buffer);
      const about = { rings: plane.design.wood.rings, bedAngle: plane.frame.bedAngle, bodyWidth: plane.widths.body };
      answer({ kind: "solid", turn: ask.turn, parts, about }, buffers as ArrayBuffer[]);
    } catch (error) {
      answer({ kind: "no-solid", turn: ask.turn, why: error instanceof Error ? error.message : String(error) });
    }
  });
}

const written = (text: string, changes: readonly Change[]): string =>
  changes.reduce(
    (now, [path, value]) => (value === undefined ? takenBack(now, path) : writtenBack(now, path, value)),
    text,
  );

function act(ask: Ask) {
  if (ask.kind === "open") return open(ask);
  if (ask.kind === "plane")
    return withPlane(ask, (plane, design) => {
      answer({ kind: "plane", turn: ask.turn, plane: sheetPlane(design, plane, ask.stage) });
      answer({ kind: "words", turn: ask.turn, words: sheetWords(design, plane, ask.stage) });
    });
  if (ask.kind === "cures")
    return withPlane(ask, (plane) => answer({ kind: "cures", turn: ask.turn, findings: checkPlane(plane) }));
  if (ask.kind === "plots")
    return withPlane(ask, (plane, design) =>
      answer({ kind: "plots", turn: ask.turn, plots: plotsOf(design, plane, ask.width) }),
    );
  if (ask.kind === "solid") return makeSolid(ask);
  if (changed(ask)) answer({ kind: "written", turn: ask.turn, text: written(opened!.text, ask.changes) });
}

/** Our bug is told to the page, which tells the maker; the worker lives on. */
function guarded(ask: Ask, run: () => void) {
  try {
    run();
  } catch (error) {
    const turn = "turn" in ask ? ask.turn : 0;
    answer({ kind: "bug", turn, message: error instanceof Error ? error.message : String(error) });
  }
}

scope.onmessage = ({ data }) => guarded(data, () => act(data));
answer({
  kind: "ready",
  figures: Object.fromEntries(
    Object.entries(FIGURES).map(([key, { unit, formula, help, source }]) => [key, { unit, formula, help, source }]),
  ),
});
