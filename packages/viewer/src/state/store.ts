// What the page holds: where the design began, what was changed since, the stage; and the way back. Listeners hear of each change.
import type { StageName } from "../protocol/build-steps.ts";
import type { ChangeValue, ParameterChange } from "../protocol/sheet-data.ts";
import { type AddressState, type DesignOrigin, formatAddress, type NamedText } from "./address.ts";

export interface SheetState {
  readonly origin: DesignOrigin;
  readonly changes: ReadonlyMap<string, ChangeValue | undefined>;
  readonly stage: StageName;
}

export interface Store {
  now(): SheetState;
  /** @param holding whether the hand is still on it: then nothing is put into the way back or the address yet */
  set(changes: readonly ParameterChange[], holding?: boolean): void;
  commit(): void;
  setStage(stage: StageName): void;
  /**
   * The followed file as it was read: the address holds it too, so that it opens where no file is followed. Undefined where
   * it needs another file beside it.
   */
  keepFollowed(copy: NamedText | undefined): void;
  begin(origin: DesignOrigin, changes?: readonly ParameterChange[], stage?: StageName): void;
  /** Takes back what could not be used, as if it had never been: no way leads back to it. */
  retract(origin: DesignOrigin, changes: ReadonlyMap<string, ChangeValue | undefined>): void;
  /** Whether there is a step back, and one forth again. */
  ways(): { readonly back: boolean; readonly forth: boolean };
  undo(): boolean;
  redo(): boolean;
  onChange(listen: (what: "design" | "stage" | "origin", holding: boolean) => void): void;
}

export function createStore(start: Omit<AddressState, "leftOut"> & { origin: DesignOrigin }): Store {
  let current: SheetState = { origin: start.origin, changes: new Map(start.changes), stage: start.stage };
  let committed = current;
  let followed: NamedText | undefined;
  const [back, forth]: [SheetState[], SheetState[]] = [[], []];
  const listeners: ((what: "design" | "stage" | "origin", holding: boolean) => void)[] = [];
  const notify = (what: "design" | "stage" | "origin", holding = false) => {
    for (const listen of listeners) listen(what, holding);
  };

  function commit() {
    if (current.changes !== committed.changes || current.origin !== committed.origin) {
      back.push(committed);
      forth.length = 0;
    }
    committed = current;
    writeAddress();
  }

  function writeAddress() {
    const { origin, changes, stage } = current;
    const from = origin.kind === "followed" && followed ? { ...origin, copy: followed } : origin;
    keepAddress(formatAddress({ origin: from, changes: [...changes], stage }));
  }

  function goTo(from: SheetState[], to: SheetState[]): boolean {
    commit();
    const next = from.pop();
    if (!next) return false;
    to.push(committed);
    const what = next.origin === current.origin ? "design" : "origin";
    current = { ...next, stage: current.stage };
    committed = current;
    commit();
    notify(what);
    return true;
  }

  return {
    now: () => current,
    set(changes, holding = false) {
      const isKnown = ([path, value]: ParameterChange) =>
        current.changes.has(path) && current.changes.get(path) === value;
      if (changes.every(isKnown) && (holding || current === committed)) return;
      const next = new Map(current.changes);
      for (const [path, value] of changes) next.set(path, value);
      current = { ...current, changes: next };
      if (!holding) commit();
      notify("design", holding);
    },
    commit() {
      if (current === committed) return;
      commit();
      notify("design");
    },
    setStage(stage) {
      current = { ...current, stage };
      commit();
      notify("stage");
    },
    keepFollowed(copy) {
      followed = copy;
      if (current === committed) writeAddress();
    },
    begin(origin, changes = [], stage = current.stage) {
      current = { origin, changes: new Map(changes), stage };
      commit();
      notify("origin");
    },
    retract(origin, changes) {
      current = { ...current, origin, changes };
      const before = back.at(-1);
      if (before?.origin === origin && sameChanges(before.changes, changes)) back.pop();
      committed = current;
      commit();
      notify("origin");
    },
    ways: () => ({ back: back.length > 0, forth: forth.length > 0 }),
    undo: () => goTo(back, forth),
    redo: () => goTo(forth, back),
    onChange: (listen) => void listeners.push(listen),
  };
}

/** A page in a frame without rights may keep no address: the sheet works all the same. */
function keepAddress(address: string) {
  try {
    history.replaceState(null, "", address);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}

const sameChanges = (a: SheetState["changes"], b: SheetState["changes"]): boolean =>
  a.size === b.size && [...a].every(([path, value]) => b.has(path) && b.get(path) === value);
