// The worker: every figure, view, mesh and file is computed here, so that the page never waits. One design is held at a time.
import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, formatFinding } from "@lamplane/bench/checks";
import { completeDesign, readDesign, removeValue, setValue, withValue } from "@lamplane/parameters/design";
import { type Elevation, FIGURES } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { PartMesh } from "../protocol/body-data.ts";
import {
  type DesignRequest,
  type OpenRequest,
  UNREQUESTED,
  type WorkerRequest,
  type WorkerResponse,
} from "../protocol/messages.ts";
import type { ParameterChange } from "../protocol/sheet-data.ts";
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
function open({ requestId, base, text, file }: OpenRequest) {
  const reading = readDesign(text, file);
  if (!reading.ok) return respond({ kind: "text-refused", requestId, base, faults: reading.faults });
  opened = { base, text, design: reading.design };
  return respond({ kind: "opened", requestId, base });
}

/** The design with its changes, once the table has found every value allowed. */
function applyChanges({ requestId, base, changes }: DesignRequest<string>): Design | undefined {
  if (!opened || opened.base !== base) {
    respond({ kind: "skipped", requestId });
    return undefined;
  }
  if (changes.length === 0) return opened.design;
  const wanted = changes.reduce((design, [path, value]) => withValue(design, path, value), opened.design);
  const reading = completeDesign(wanted);
  if (reading.ok) return reading.design;
  respond({ kind: "refused", requestId, base, faults: reading.faults });
  return undefined;
}

/** The plane that was computed last: sheet, solid and plots of one request share it. */
let lastComputed: { requestId: number; base: number; design: Design; plane: Elevation } | undefined;

function withPlane(request: DesignRequest<string>, act: (plane: Elevation, design: Design) => void) {
  const { requestId, base } = request;
  if (lastComputed?.requestId !== requestId || lastComputed.base !== base) {
    const design = applyChanges(request);
    if (!design) return;
    lastComputed = { requestId, base, design, plane: asBuiltPlane(design) };
  }
  act(lastComputed.plane, lastComputed.design);
}

function makeSolid({ requestId, stage }: DesignRequest<"solid">, plane: Elevation) {
  let parts: readonly PartMesh[];
  try {
    parts = partMeshes(plane, stage);
  } catch {
    return respond({ kind: "no-solid", requestId });
  }
  const buffers = parts
    .flatMap(({ corners, edges, section, cap }) => [corners, edges, section, cap])
    .map((a) => a.buffer);
  const about = { rings: plane.design.wood.rings, bedAngle: plane.frame.bedAngle, bodyWidth: plane.widths.body };
  respond({ kind: "solid", requestId, parts, about }, buffers as ArrayBuffer[]);
}

function makeSheet({ requestId, stage }: DesignRequest<"plane">, plane: Elevation, design: Design) {
  respond({ kind: "plane", requestId, plane: sheetPlane(design, plane, stage) });
  respond({ kind: "words", requestId, words: sheetWords(design, plane, stage) });
}

const writeChanges = (text: string, changes: readonly ParameterChange[]): string =>
  changes.reduce(
    (now, [path, value]) => (value === undefined ? removeValue(now, path) : setValue(now, path, value)),
    text,
  );

function handleRequest(request: WorkerRequest): void {
  const { kind, requestId } = request;
  if (kind === "open") open(request);
  else if (kind === "plane") withPlane(request, (plane, design) => makeSheet(request, plane, design));
  else if (kind === "solid") withPlane(request, (plane) => makeSolid(request, plane));
  else if (kind === "cures")
    withPlane(request, (plane, design) => {
      const findings = checkPlane(plane).map((finding) => formatFinding(design, finding));
      respond({ kind: "cures", requestId, findings });
    });
  else if (kind === "plots")
    withPlane(request, (plane, design) =>
      respond({ kind: "plots", requestId, plots: makePlots(design, plane, request.width) }),
    );
  else if (applyChanges(request))
    respond({ kind: "written", requestId, text: writeChanges(opened!.text, request.changes) });
}

/** A bug of ours is reported to the page, which shows it; the worker lives on. */
function runGuarded(request: WorkerRequest) {
  try {
    handleRequest(request);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    respond({ kind: "bug", requestId: request.requestId, message });
  }
}

scope.onmessage = ({ data }) => runGuarded(data);
respond({
  kind: "ready",
  requestId: UNREQUESTED,
  figures: Object.fromEntries(
    Object.entries(FIGURES).map(([key, { unit, formula, help, source }]) => [key, { unit, formula, help, source }]),
  ),
});
