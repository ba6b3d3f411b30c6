// The workers: one draws, one makes the body, one may take its time (cures, plots, the file's text). The newest question wins.
import type { ParameterChange, StageName, WorkerRequest, WorkerResponse } from "../protocol.ts";

export interface DesignQuery {
  readonly base: number;
  readonly changes: readonly ParameterChange[];
  readonly stage: StageName;
}
type ResponseHandler = (answer: WorkerResponse) => void;
type OpenRequest = Extract<WorkerRequest, { kind: "open" }>;

/** When the maker has paused for this long, cures are searched for and plots drawn, ms. */
const PAUSE = 160;

export interface Engine {
  open(base: number, text: string, file: string): void;
  /**
   * Asks for sheet and body, each as soon as the last one is done; for cures and plots after a pause.
   * @param plotWidth width of the plots, mm
   */
  show(question: DesignQuery, plotWidth: number): number;
  /** The design file's text with the changes in it. @throws where it is refused, or is not the one that is open any more */
  text(question: DesignQuery): Promise<string>;
}

/** @param makeWorker starts one more worker */
export function startEngine(onResponse: ResponseHandler, makeWorker: () => Worker): Engine {
  const drawing = latestOnly(makeWorker(), onResponse);
  const shaping = latestOnly(makeWorker(), (answer) => {
    if (answer.kind === "solid" || answer.kind === "no-solid" || answer.kind === "bug") onResponse(answer);
  });
  let opening: OpenRequest | undefined;
  let patient: Worker | undefined;
  let [requestId, pause] = [0, 0];
  const texts = new Map<number, { give(text: string): void; refuse(why: Error): void }>();

  return {
    open(base, text, file) {
      opening = { kind: "open", base, text, file };
      drawing.open(opening);
      shaping.open(opening);
      patient?.postMessage(opening);
    },
    show(question, plotWidth) {
      requestId += 1;
      drawing.ask({ kind: "plane", requestId, ...question });
      shaping.ask({ kind: "solid", requestId, ...question });
      clearTimeout(pause);
      const asks: WorkerRequest[] = [
        { kind: "cures", requestId, ...question },
        { kind: "plots", requestId, ...question, width: plotWidth },
      ];
      pause = window.setTimeout(() => asks.forEach(toPatient), PAUSE);
      return requestId;
    },
    text(question) {
      requestId += 1;
      const asked = requestId;
      return new Promise((give, refuse) => {
        texts.set(asked, { give, refuse });
        toPatient({ kind: "written", requestId: asked, ...question });
      });
    },
  };

  /** The patient worker is started when it is first needed: the first picture should not wait for it. */
  function toPatient(ask: WorkerRequest) {
    if (!patient) {
      patient = makeWorker();
      patient.onmessage = ({ data }: MessageEvent<WorkerResponse>) => {
        if (data.kind === "cures" || data.kind === "plots" || data.kind === "bug") onResponse(data);
        if ("requestId" in data) answerText(data);
      };
      if (opening) patient.postMessage(opening);
    }
    patient.postMessage(ask);
  }

  function answerText(answer: Extract<WorkerResponse, { requestId: number }>) {
    const waiting = texts.get(answer.requestId);
    texts.delete(answer.requestId);
    if (answer.kind === "written") waiting?.give(answer.text);
    else waiting?.refuse(new Error("The design has changed meanwhile, or is refused; ask again."));
  }
}

/** A worker that is asked one thing at a time; of what comes meanwhile only the last is asked next. */
function latestOnly(worker: Worker, onResponse: ResponseHandler) {
  let isBusy = false;
  let waiting: WorkerRequest | undefined;
  const ask = (question: WorkerRequest) => {
    if (isBusy) waiting = question;
    else worker.postMessage(question);
    isBusy = true;
  };
  worker.onmessage = ({ data }: MessageEvent<WorkerResponse>) => {
    if ("requestId" in data && data.requestId > 0 && data.kind !== "plane") {
      isBusy = false;
      const next = waiting;
      waiting = undefined;
      if (next) ask(next);
    }
    onResponse(data);
  };
  return { ask, open: (opening: OpenRequest) => worker.postMessage(opening) };
}
