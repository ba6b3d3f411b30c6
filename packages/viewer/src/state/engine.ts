// The workers: one draws, one makes the body, one may take its time (cures, plots, the file's text). The newest request wins.

import type { ShopSource } from "@lamplane/parameters/design";
import type { StageName } from "../protocol/build-steps.ts";
import type { OpenRequest, WorkerRequest, WorkerResponse, WrittenForm } from "../protocol/messages.ts";
import type { ParameterChange } from "../protocol/sheet-data.ts";
import { FILES } from "../words/page.ts";

export interface DesignQuery {
  readonly base: number;
  readonly changes: readonly ParameterChange[];
  readonly stage: StageName;
}
type ResponseHandler = (response: WorkerResponse) => void;

/** When the maker has paused for this long, cures are searched for and plots drawn, ms. */
const PAUSE = 160;

/** mm. */
export interface PictureWidths {
  readonly plots: number;
  readonly step: number;
}

export interface Engine {
  /** @param shop shop file that goes with the text */
  open(base: number, text: string, file: string, shop?: ShopSource): void;
  /**
   * Requests sheet and body, each as soon as the last one is done; cures and plots after a pause.
   * @param widths of what is drawn in mm of its own, asked for once the maker has paused: the plots, the step's drawing
   * @returns the number of these requests
   */
  show(query: DesignQuery, widths: () => PictureWidths): number;
  /**
   * The design file's text with the changes in it.
   * @throws where it is refused, or is not the one that is open any more
   */
  text(query: DesignQuery, form?: WrittenForm): Promise<string>;
}

/** What each worker's responses are taken for; the body's and the patient worker open the same texts as the first. */
const OF_BODY: readonly WorkerResponse["kind"][] = ["solid", "no-solid", "bug"];
const BEFORE_A_SHEET: readonly WorkerResponse["kind"][] = ["ready", "opened"];
const OF_PATIENT: readonly WorkerResponse["kind"][] = ["cures", "plots", "guide", "bug"];

/**
 * @param makeWorker starts one more worker that draws
 * @param fetchPatient fetches and starts the worker that may take its time
 */
export function startEngine(
  onResponse: ResponseHandler,
  makeWorker: () => Worker,
  fetchPatient: () => Promise<Worker>,
): Engine {
  let finishFirst = () => {};
  /** The first sheet is drawn or refused: what may take its time is not fetched before, so that it keeps nothing from the screen. */
  const firstSheet = new Promise<void>((resolve) => {
    finishFirst = resolve;
  });
  const drawing = latestOnly(makeWorker, (response) => {
    onResponse(response);
    if (!BEFORE_A_SHEET.includes(response.kind)) finishFirst();
  });
  const shaping = latestOnly(makeWorker, only(OF_BODY, onResponse));
  const patient = startedLate(fetchPatient, only(OF_PATIENT, onResponse));
  let [requestId, pause] = [0, 0];

  return {
    open(base, text, file, shop) {
      requestId += 1;
      const request: OpenRequest = { kind: "open", requestId, base, text, file, ...(shop && { shop }) };
      for (const worker of [drawing, shaping, patient]) worker.open(request);
    },
    show(query, widths) {
      requestId += 1;
      drawing.send({ kind: "plane", requestId, ...query });
      shaping.send({ kind: "solid", requestId, ...query });
      clearTimeout(pause);
      const id = requestId;
      const ask = () => {
        const { plots, step } = widths();
        patient.send({ kind: "cures", requestId: id, ...query });
        patient.send({ kind: "guide", requestId: id, ...query, width: step });
        patient.send({ kind: "plots", requestId: id, ...query, width: plots });
      };
      const mine = window.setTimeout(async () => {
        await firstSheet;
        if (mine === pause) ask();
      }, PAUSE);
      pause = mine;
      return requestId;
    },
    text(query, form = "own") {
      requestId += 1;
      return patient.text({ kind: "written", requestId, ...query, form });
    },
  };
}

const only =
  (kinds: readonly WorkerResponse["kind"][], onResponse: ResponseHandler): ResponseHandler =>
  (response) => {
    if (kinds.includes(response.kind)) onResponse(response);
  };

/** A worker that works on one request at a time; of what comes meanwhile only the last is sent next. It starts with the first text. */
function latestOnly(makeWorker: () => Worker, onResponse: ResponseHandler) {
  let worker: Worker | undefined;
  let pending: number | undefined;
  let waiting: WorkerRequest | undefined;
  const send = (request: WorkerRequest) => {
    if (pending !== undefined) {
      waiting = request;
      return;
    }
    pending = request.requestId;
    worker?.postMessage(request);
  };
  const receive = ({ data }: MessageEvent<WorkerResponse>) => {
    if (data.requestId === pending && data.kind !== "plane") {
      const next = waiting;
      [pending, waiting] = [undefined, undefined];
      if (next) send(next);
    }
    onResponse(data);
  };
  const start = (): Worker => Object.assign(makeWorker(), { onmessage: receive });
  return {
    send,
    open(request: OpenRequest) {
      worker ??= start();
      worker.postMessage(request);
    },
  };
}

/** A worker that is started when it is first needed: the first picture should not wait for it. */
function startedLate(fetchWorker: () => Promise<Worker>, onResponse: ResponseHandler) {
  const texts = createTextPromises();
  let worker: Worker | undefined;
  let isFetching = false;
  /** What came before the worker was there; it opens the newest text first. */
  let waiting: WorkerRequest[] = [];
  let opened: OpenRequest | undefined;
  const start = async () => {
    try {
      worker = await fetchWorker();
    } catch (error) {
      isFetching = false; // the next request tries again
      return texts.rejectAll(error as Error);
    }
    worker.onmessage = ({ data }: MessageEvent<WorkerResponse>) => {
      onResponse(data);
      texts.settle(data);
    };
    if (opened) worker.postMessage(opened);
    for (const request of waiting) worker.postMessage(request);
    waiting = [];
  };
  const send = (request: WorkerRequest) => {
    if (worker) return worker.postMessage(request);
    waiting = [...waiting.filter(({ kind }) => kind !== request.kind || kind === "written"), request];
    if (isFetching) return;
    isFetching = true;
    void start();
  };
  return {
    send,
    open(request: OpenRequest) {
      opened = request;
      worker?.postMessage(request);
    },
    text(request: WorkerRequest): Promise<string> {
      const text = texts.promise(request.requestId);
      send(request);
      return text;
    },
  };
}

/** Texts that were asked for, by the number of the request. */
function createTextPromises() {
  const pending = new Map<number, { resolve(text: string): void; reject(why: Error): void }>();
  return {
    promise: (requestId: number) =>
      new Promise<string>((resolve, reject) => pending.set(requestId, { resolve, reject })),
    settle(response: WorkerResponse) {
      const text = pending.get(response.requestId);
      pending.delete(response.requestId);
      if (response.kind === "written") text?.resolve(response.text);
      else text?.reject(new Error(FILES.changed));
    },
    rejectAll(why: Error) {
      for (const { reject } of pending.values()) reject(why);
      pending.clear();
    },
  };
}
