// The worker that draws: figures, views, words and meshes, so that the page never waits. One design is held at a time.
import { type Elevation, FIGURES } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { PartMesh } from "../protocol/body-data.ts";
import { type DesignRequest, UNREQUESTED, type WorkerRequest } from "../protocol/messages.ts";
import { partMeshes } from "./meshes.ts";
import { createOpenedDesign, listenGuarded, type Respond, type WorkerScope } from "./opened-design.ts";
import { sheetPlane, sheetWords } from "./sheet-plane.ts";

const scope = self as unknown as WorkerScope;
const respond: Respond = (message, transfer = []) => scope.postMessage(message, transfer);
const opened = createOpenedDesign(respond);

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

function handleRequest(request: WorkerRequest): void {
  const { kind } = request;
  if (kind === "open") opened.open(request);
  else if (kind === "plane") opened.withPlane(request, (plane, design) => makeSheet(request, plane, design));
  else if (kind === "solid") opened.withPlane(request, (plane) => makeSolid(request, plane));
}

listenGuarded(scope, handleRequest);
respond({
  kind: "ready",
  requestId: UNREQUESTED,
  figures: Object.fromEntries(
    Object.entries(FIGURES).map(([key, { name, unit, formula, help, source }]) => [
      key,
      { name, unit, formula, help, source },
    ]),
  ),
});
