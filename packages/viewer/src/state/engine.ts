// The workers: one draws, one makes the body, one may take its time (cures, plots, the file's text). The newest question wins.
import type { Answer, Ask, Change, StageName } from "../protocol.ts";

export interface Question {
  readonly base: number;
  readonly changes: readonly Change[];
  readonly stage: StageName;
}
type Hears = (answer: Answer) => void;
type Opening = Extract<Ask, { kind: "open" }>;

/** When the maker has paused for this long, cures are searched for and plots drawn, ms. */
const PAUSE = 160;

export interface Engine {
  open(base: number, text: string, file: string): void;
  /**
   * Asks for sheet and body, each as soon as the last one is done; for cures and plots after a pause.
   * @param plotWidth width of the plots, mm
   */
  show(question: Question, plotWidth: number): number;
  /** The design file's text with the changes in it. @throws where it is refused, or is not the one that is open any more */
  text(question: Question): Promise<string>;
}

/** @param makeWorker starts one more worker */
export function startEngine(hear: Hears, makeWorker: () => Worker): Engine {
  const drawing = newestFirst(makeWorker(), hear);
  const shaping = newestFirst(makeWorker(), (answer) => {
    if (answer.kind === "solid" || answer.kind === "no-solid" || answer.kind === "bug") hear(answer);
  });
  let opening: Opening | undefined;
  let patient: Worker | undefined;
  let [turn, pause] = [0, 0];
  const texts = new Map<number, { give(text: string): void; refuse(why: Error): void }>();

  return {
    open(base, text, file) {
      opening = { kind: "open", base, text, file };
      drawing.open(opening);
      shaping.open(opening);
      patient?.postMessage(opening);
    },
    show(question, plotWidth) {
      turn += 1;
      drawing.ask({ kind: "plane", turn, ...question });
      shaping.ask({ kind: "solid", turn, ...question });
      clearTimeout(pause);
      const asks: Ask[] = [
        { kind: "cures", turn, ...question },
        { kind: "plots", turn, ...question, width: plotWidth },
      ];
      pause = window.setTimeout(() => asks.forEach(toPatient), PAUSE);
      return turn;
    },
    text(question) {
      turn += 1;
      const asked = turn;
      return new Promise((give, refuse) => {
        texts.set(asked, { give, refuse });
        toPatient({ kind: "written", turn: asked, ...question });
      });
    },
  };

  /** The patient worker is started when it is first needed: the first picture should not wait for it. */
  function toPatient(ask: Ask) {
    if (!patient) {
      patient = makeWorker();
      patient.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.kind === "cures" || data.kind === "plots" || data.kind === "bug") hear(data);
        if ("turn" in data) answerText(data);
      };
      if (opening) patient.postMessage(opening);
    }
    patient.postMessage(ask);
  }

  function answerText(answer: Extract<Answer, { turn: number }>) {
    const waiting = texts.get(answer.turn);
    texts.delete(answer.turn);
    if (answer.kind === "written") waiting?.give(answer.text);
    else waiting?.refuse(new Error("The design has changed meanwhile, or is refused; ask again."));
  }
}

/** A worker that is asked one thing at a time; of what comes meanwhile only the last is asked next. */
function newestFirst(worker: Worker, hear: Hears) {
  let isBusy = false;
  let waiting: Ask | undefined;
  const ask = (question: Ask) => {
    if (isBusy) waiting = question;
    else worker.postMessage(question);
    isBusy = true;
  };
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    if ("turn" in data && data.turn > 0 && data.kind !== "plane") {
      isBusy = false;
      const next = waiting;
      waiting = undefined;
      if (next) ask(next);
    }
    hear(data);
  };
  return { ask, open: (opening: Opening) => worker.postMessage(opening) };
}
