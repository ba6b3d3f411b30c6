// The worker that may take its time: remedies, plots, the guide to each step, and the file's text with the changes in it.
import { checkPlane } from "@lamplane/bench/checks";
import { carryShop, removeValue, setValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import type { DesignRequest, WorkerRequest } from "../protocol/messages.ts";
import type { ParameterChange } from "../protocol/sheet-data.ts";
import { answerBench } from "./bench-build.ts";
import { makeGuide } from "./guide.ts";
import { createOpenedDesign, listenGuarded, type Respond, type WorkerScope } from "./opened-design.ts";
import { makePlots } from "./plots.ts";
import { shortText } from "./short-text.ts";

const scope = self as unknown as WorkerScope;
const respond: Respond = (message, transfer = []) => scope.postMessage(message, transfer);
const opened = createOpenedDesign(respond);

const writeChanges = (text: string, changes: readonly ParameterChange[]): string =>
  changes.reduce(
    (now, [path, value]) => (value === undefined ? removeValue(now, path) : setValue(now, path, value)),
    text,
  );

function writtenText({ changes, form = "own" }: Extract<WorkerRequest, { kind: "written" }>, design: Design): string {
  const text = writeChanges(opened.text(), changes);
  const shop = form === "own" ? undefined : opened.shop();
  const carried = shop ? carryShop(text, shop) : text;
  return form === "short" ? shortText(design, carried) : carried;
}

function findCures(request: DesignRequest<"cures">): void {
  const { requestId } = request;
  opened.withPlane(request, (plane) => {
    const findings = checkPlane(plane).map(({ code, cure }) => ({ code, cure }));
    respond({ kind: "cures", requestId, findings });
  });
}

function handleRequest(request: WorkerRequest): void {
  const { kind, requestId } = request;
  if (kind === "open") opened.open(request);
  else if (kind === "bench")
    respond({
      kind: "bench",
      requestId,
      answer: answerBench(request.text, request.file, request.width, request.entry),
    });
  else if (kind === "cures") findCures(request);
  else if (kind === "plots")
    opened.withPlane(request, (plane, design) =>
      respond({ kind: "plots", requestId, ...makePlots(design, plane, request.width) }),
    );
  else if (kind === "guide")
    opened.withPlane(request, (plane, design) =>
      respond({ kind: "guide", requestId, guide: makeGuide(design, plane, request.stage, request.width) }),
    );
  else if (kind === "written") {
    const design = opened.applyChanges(request);
    if (design) respond({ kind: "written", requestId, text: writtenText(request, design) });
  }
}

listenGuarded(scope, handleRequest);
