// The design that a worker holds: the text opened last, and the plane computed last. What is asked of another text is skipped.
import { asBuiltPlane } from "@lamplane/bench";
import { completeDesign, readDesign, type ShopSource, withValue } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { DesignRequest, OpenRequest, WorkerRequest, WorkerResponse } from "../protocol/messages.ts";
import { FILES } from "../words/page.ts";

const NO_SHOP_FILE = FILES.shop;

export interface WorkerScope {
  postMessage(message: WorkerResponse, transfer?: ArrayBuffer[]): void;
  onmessage: ((event: { data: WorkerRequest }) => void) | null;
}
export type Respond = (message: WorkerResponse, transfer?: ArrayBuffer[]) => void;

export interface OpenedDesign {
  open(request: OpenRequest): void;
  /** The design with its changes, once the table has found every value allowed; otherwise the refusal is the response. */
  applyChanges(request: DesignRequest<string>): Design | undefined;
  withPlane(request: DesignRequest<string>, act: (plane: Elevation, design: Design) => void): void;
  text(): string;
  /** Shop file that goes with the text. */
  shop(): ShopSource | undefined;
}

export function createOpenedDesign(respond: Respond): OpenedDesign {
  let opened: { base: number; text: string; shop: ShopSource | undefined; design: Design } | undefined;
  let last: { requestId: number; base: number; design: Design; plane: Elevation } | undefined;

  function open({ requestId, base, text, file, shop }: OpenRequest) {
    const reading = readDesign(text, file, {
      open: () => shop ?? { problem: NO_SHOP_FILE },
      ...(shop && { instead: shop }),
    });
    if (!reading.ok) return respond({ kind: "text-refused", requestId, base, faults: reading.faults });
    opened = { base, text, shop, design: reading.design };
    return respond({ kind: "opened", requestId, base });
  }

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

  function withPlane(request: DesignRequest<string>, act: (plane: Elevation, design: Design) => void) {
    const { requestId, base } = request;
    if (last?.requestId !== requestId || last.base !== base) {
      const design = applyChanges(request);
      if (!design) return;
      last = { requestId, base, design, plane: asBuiltPlane(design) };
    }
    act(last.plane, last.design);
  }

  return { open, applyChanges, withPlane, text: () => opened!.text, shop: () => opened!.shop };
}

/** A bug of ours is reported to the page, which shows it; the worker lives on. */
export function listenGuarded(scope: WorkerScope, handle: (request: WorkerRequest) => void): void {
  scope.onmessage = ({ data }) => {
    try {
      handle(data);
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      scope.postMessage({ kind: "bug", requestId: data.requestId, message });
    }
  };
}
