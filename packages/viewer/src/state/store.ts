// What the page holds: where the design began, what was changed since, the stage; and the way back. Told to whoever listens.
import type { Change, StageName, Value } from "../protocol.ts";
import { type Addressed, addressOf, type Beginning } from "./address.ts";

export interface Held {
  readonly beginning: Beginning;
  readonly changes: ReadonlyMap<string, Value | undefined>;
  readonly stage: StageName;
}

export interface Store {
  now(): Held;
  /** @param holding whether the hand is still on it: then nothing is put into the way back or the address yet */
  set(changes: readonly Change[], holding?: boolean): void;
  settle(): void;
  setStage(stage: StageName): void;
  begin(beginning: Beginning, changes?: readonly Change[], stage?: StageName): void;
  /** Takes back what could not be used, as if it had never been: no way leads back to it. */
  retract(beginning: Beginning, changes: ReadonlyMap<string, Value | undefined>): void;
  undo(): boolean;
  redo(): boolean;
  onChange(listen: (what: "design" | "stage" | "beginning", holding: boolean) => void): void;
}

export function createStore(start: Omit<Addressed, "leftOut"> & { beginning: Beginning }): Store {
  let held: Held = { beginning: start.beginning, changes: new Map(start.changes), stage: start.stage };
  let settled = held;
  const [back, forth]: [Held[], Held[]] = [[], []];
  const listeners: ((what: "design" | "stage" | "beginning", holding: boolean) => void)[] = [];
  const tell = (what: "design" | "stage" | "beginning", holding = false) => {
    for (const listen of listeners) listen(what, holding);
  };

  function settle() {
    if (held.changes !== settled.changes || held.beginning !== settled.beginning) {
      back.push(settled);
      forth.length = 0;
    }
    settled = held;
    const address = addressOf({ beginning: held.beginning, changes: [...held.changes], stage: held.stage });
    keepAddress(address);
  }

  function goTo(from: Held[], to: Held[]): boolean {
    settle();
    const next = from.pop();
    if (!next) return false;
    to.push(settled);
    const what = next.beginning === held.beginning ? "design" : "beginning";
    held = { ...next, stage: held.stage };
    settled = held;
    settle();
    tell(what);
    return true;
  }

  return {
    now: () => held,
    set(changes, holding = false) {
      const isKnown = ([path, value]: Change) => held.changes.has(path) && held.changes.get(path) === value;
      if (changes.every(isKnown) && (holding || held === settled)) return;
      const next = new Map(held.changes);
      for (const [path, value] of changes) next.set(path, value);
      held = { ...held, changes: next };
      if (!holding) settle();
      tell("design", holding);
    },
    settle() {
      if (held === settled) return;
      settle();
      tell("design");
    },
    setStage(stage) {
      held = { ...held, stage };
      settle();
      tell("stage");
    },
    begin(beginning, changes = [], stage = held.stage) {
      held = { beginning, changes: new Map(changes), stage };
      settle();
      tell("beginning");
    },
    retract(beginning, changes) {
      held = { ...held, beginning, changes };
      const before = back.at(-1);
      if (before?.beginning === beginning && sameChanges(before.changes, changes)) back.pop();
      settled = held;
      settle();
      tell("beginning");
    },
    undo: () => goTo(back, forth),
    redo: () => goTo(forth, back),
    onChange: (listen) => void listeners.push(listen),
  };
}

/** A page in a frame without rights may keep no address: the sheet works all the same, and does not claim one. */
function keepAddress(address: string) {
  try {
    history.replaceState(null, "", address);
    delete document.documentElement.dataset.noAddress;
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    document.documentElement.dataset.noAddress = "";
  }
}

const sameChanges = (a: Held["changes"], b: Held["changes"]): boolean =>
  a.size === b.size && [...a].every(([path, value]) => b.has(path) && b.get(path) === value);
