// The worker: every figure, view, mesh and file is computed here, so that the page never waits. One design is held at a time.
import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, formatFinding } from "@lamplane/bench/checks";
import { completeDesign, readDesign, removeValue, setValue, withValue } from "@lamplane/parameters/design";
import { type Elevation, FIGURES } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { DesignRequest, ParameterChange, WorkerRequest, WorkerResponse } from "../protocol.ts";
import { partMeshes } from "./meshes.ts";
import { makePlots } from "./plots.ts";
import { sheetPlane, sheetWords } from "./sheet-plane.ts";

const scope = self as unknown as {
  postMessage(message: WorkerResponse, transfer?: ArrayBuffer[]): void;
  onmessage: ((event: { data: WorkerRequest }) => void) | null;
};
const respond = (message: WorkerResponse, transfer: ArrayBuffer[] = []) => scope.postMessage(message, transfer);

/** The text that was opened last, and the design in it. */
let opened: { base: number; text: string; design: Design } | undefined;
function open({ base, text, file }: Extract<WorkerRequest, { kind: "open" }>) {
  const reading = readDesign(text, file);
  if (!reading.ok) return respond({ kind: "refused", requestId: 0, base, faults: reading.faults });
  opened = { base, text, design: reading.design };
  return respond({ kind: "opened", base, name: reading.design.name, givenPaths: [...reading.givenPaths] });
}

/** The design with its changes, once the table has found every value allowed. */
function applyChanges(ask: DesignRequest<string>): Design | undefined {
  if (!opened || opened.base !== ask.base) {
    respond({ kind: "skipped", requestId: ask.requestId });
    return undefined;
  }
  if (ask.changes.length === 0) return opened.design;
  const wanted = ask.changes.reduce((design, [path, value]) => withValue(design, path, value), opened.design);
  const reading = completeDesign(wanted);
  if (reading.ok) return reading.design;
  respond({ kind: "refused", requestId: ask.requestId, base: ask.base, faults: reading.faults });
  return undefined;
}

/** The plane that was computed last: sheet, solid and files of one turn share it. */
let lastComputed: { turn: number; base: number; design: Design; plane: Elevation } | undefined;

function withPlane(ask: DesignRequest<string>, act: (plane: Elevation, design: Design) => void) {
  if (lastComputed?.turn !== ask.requestId || lastComputed.base !== ask.base) {
    const design = applyChanges(ask);
    if (!design) return;
    lastComputed = { turn: ask.requestId, base: ask.base, design, plane: asBuiltPlane(design) };
  }
  act(lastComputed.plane, lastComputed.design);
}

function makeSolid(ask: DesignRequest<"solid">) {
  withPlane(ask, (plane) => {
    try {
      const parts = partMeshes(plane, ask.stage);
      const buffers = parts.flatMap(({ corners, edges, section }) => [corners, edges, section]).map((a) => a.buffer);
      const about = { rings: plane.design.wood.rings, bedAngle: plane.frame.bedAngle, bodyWidth: plane.widths.body };
      respond({ kind: "solid", requestId: ask.requestId, parts, about }, buffers as ArrayBuffer[]);
    } catch (error) {
      respond({
        kind: "no-solid",
        requestId: ask.requestId,
        why: error instanceof Error ? error.message : String(error),
      });
    }
  });
}

const writeChanges = (text: string, changes: readonly ParameterChange[]): string =>
  changes.reduce(
    (now, [path, value]) => (value === undefined ? removeValue(now, path) : setValue(now, path, value)),
    text,
  );

function handleRequest(ask: WorkerRequest) {
  if (ask.kind === "open") return open(ask);
  if (ask.kind === "plane")
    return withPlane(ask, (plane, design) => {
      respond({ kind: "plane", requestId: ask.requestId, plane: sheetPlane(design, plane, ask.stage) });
      respond({ kind: "words", requestId: ask.requestId, words: sheetWords(design, plane, ask.stage) });
    });
  if (ask.kind === "cures")
    return withPlane(ask, (plane, design) => {
      const findings = checkPlane(plane).map((finding) => formatFinding(design, finding));
      respond({ kind: "cures", requestId: ask.requestId, findings });
    });
  if (ask.kind === "plots")
    return withPlane(ask, (plane, design) =>
      respond({ kind: "plots", requestId: ask.requestId, plots: makePlots(design, plane, ask.width) }),
    );
  if (ask.kind === "solid") return makeSolid(ask);
  if (applyChanges(ask))
    respond({ kind: "written", requestId: ask.requestId, text: writeChanges(opened!.text, ask.changes) });
}

/** Our bug is told to the page, which tells the maker; the worker lives on. */
function runGuarded(ask: WorkerRequest, run: () => void) {
  try {
    run();
  } catch (error) {
    const turn = "requestId" in ask ? ask.requestId : 0;
    respond({ kind: "bug", requestId: turn, message: error instanceof Error ? error.message : String(error) });
  }
}

scope.onmessage = ({ data }) => runGuarded(data, () => handleRequest(data));
respond({
  kind: "ready",
  figures: Object.fromEntries(
    Object.entries(FIGURES).map(([key, { unit, formula, help, source }]) => [key, { unit, formula, help, source }]),
  ),
});
