// What the page holds: where the design began, what was changed since, the stage; and the way back. Listeners hear of each change.
import type { StageName } from "../protocol/build-steps.ts";
import type { ChangeValue, ParameterChange } from "../protocol/sheet-data.ts";
import { type AddressState, type DesignOrigin, formatAddress, type NamedText } from "./address.ts";
import { setAddressBar } from "./address-bar.ts";
import { createUndoStack, type UndoStack } from "./undo.ts";

export interface SheetState {
  readonly origin: DesignOrigin;
  readonly changes: ReadonlyMap<string, ChangeValue | undefined>;
  readonly stage: StageName;
}

type StoreListener = (what: "design" | "stage" | "origin", holding: boolean) => void;

export interface Store extends Pick<UndoStack, "ways"> {
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
  undo(): boolean;
  redo(): boolean;
  onChange(listen: StoreListener): void;
}

export function createStore(start: Omit<AddressState, "leftOut"> & { origin: DesignOrigin }): Store {
  let current: SheetState = { origin: start.origin, changes: new Map(start.changes), stage: start.stage };
  const undo = createUndoStack(current);
  let followed: NamedText | undefined;
  const listeners: StoreListener[] = [];
  const notify: StoreListener = (what, holding) => {
    for (const listen of listeners) listen(what, holding);
  };
  const writeAddress = () => setAddressBar(addressOf(current, followed));

  function commit(state: SheetState) {
    current = state;
    undo.commit(current);
    writeAddress();
  }

  function go(direction: "back" | "forth"): boolean {
    commit(current);
    const next = undo.go(direction);
    if (!next) return false;
    const what = next.origin === current.origin ? "design" : "origin";
    commit({ ...next, stage: current.stage });
    notify(what, false);
    return true;
  }

  return {
    now: () => current,
    set(changes, holding = false) {
      const isKnown = ([path, value]: ParameterChange) =>
        current.changes.has(path) && current.changes.get(path) === value;
      if (changes.every(isKnown) && (holding || undo.isCommitted(current))) return;
      current = { ...current, changes: new Map([...current.changes, ...changes]) };
      if (!holding) commit(current);
      notify("design", holding);
    },
    commit() {
      if (undo.isCommitted(current)) return;
      commit(current);
      notify("design", false);
    },
    setStage(stage) {
      commit({ ...current, stage });
      notify("stage", false);
    },
    keepFollowed(copy) {
      followed = copy;
      if (undo.isCommitted(current)) writeAddress();
    },
    begin(origin, changes = [], stage = current.stage) {
      commit({ origin, changes: new Map(changes), stage });
      notify("origin", false);
    },
    retract(origin, changes) {
      current = { ...current, origin, changes };
      undo.retract(current);
      writeAddress();
      notify("origin", false);
    },
    ways: undo.ways,
    undo: () => go("back"),
    redo: () => go("forth"),
    onChange: (listen) => void listeners.push(listen),
  };
}

function addressOf({ origin, changes, stage }: SheetState, followed: NamedText | undefined): string {
  const from = origin.kind === "followed" && followed ? { ...origin, copy: followed } : origin;
  return formatAddress({ origin: from, changes: [...changes], stage });
}
