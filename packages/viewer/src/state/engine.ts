// The two workers: one for what must follow the hand, one for what may take its time (cures, files). Newest question wins.

import type { Answer, Ask, Asked, Change, StageName } from "../protocol.ts";
import SheetWorker from "../worker/worker.ts?worker&inline";

export interface Question {
  readonly base: number;
  readonly changes: readonly Change[];
  readonly stage: StageName;
}
type Hears = (answer: Answer) => void;

/** When the maker has paused for this long, cures are searched for, ms. */
const PAUSE = 160;

export interface Engine {
  open(base: number, text: string, file: string): void;
  /** Asks for the sheet at once, for the solid when the last one is done, for cures after a pause. */
  show(question: Question): number;
  /** Asks the patient worker; the answer comes through `hear`. */
  fetch(ask: Ask): void;
  nextTurn(): number;
}

export function startEngine(hear: Hears): Engine {
  const quick = new SheetWorker();
  const patient = new SheetWorker();
  let turn = 0;
  let pause = 0;
  const waiting: { plane: Asked<"plane"> | undefined; solid: Asked<"solid"> | undefined } = {
    plane: undefined,
    solid: undefined,
  };
  const busy = { plane: false, solid: false };

  quick.onmessage = ({ data }: MessageEvent<Answer>) => {
    if (data.kind === "plane" || data.kind === "refused" || data.kind === "bug") settle("plane");
    if (data.kind === "solid" || data.kind === "no-solid" || data.kind === "refused" || data.kind === "bug")
      settle("solid");
    hear(data);
  };
  patient.onmessage = ({ data }: MessageEvent<Answer>) => {
    if (data.kind !== "ready" && data.kind !== "opened" && data.kind !== "refused") hear(data);
  };

  function settle(kind: "plane" | "solid") {
    busy[kind] = false;
    const next = waiting[kind];
    waiting[kind] = undefined;
    if (next) send(kind, next as never);
  }

  function send(kind: "plane" | "solid", ask: Asked<"plane"> & Asked<"solid">) {
    if (busy[kind]) {
      waiting[kind] = ask;
      return;
    }
    busy[kind] = true;
    quick.postMessage(ask satisfies Ask);
  }

  return {
    open(base, text, file) {
      const ask: Ask = { kind: "open", base, text, file };
      quick.postMessage(ask);
      patient.postMessage(ask);
    },
    show(question) {
      turn += 1;
      send("plane", { kind: "plane", turn, ...question } as never);
      send("solid", { kind: "solid", turn, ...question } as never);
      clearTimeout(pause);
      const asks: Ask[] = [
        { kind: "cures", turn, ...question },
        { kind: "plots", turn, ...question },
      ];
      pause = window.setTimeout(() => asks.forEach((ask) => void patient.postMessage(ask)), PAUSE);
      return turn;
    },
    fetch: (ask) => patient.postMessage(ask),
    nextTurn: () => ++turn,
  };
}
