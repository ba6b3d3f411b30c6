// The states that were committed, and the way back and forth again through them; a stage alone is no step of it.
import type { SheetState } from "./store.ts";

export interface UndoStack {
  isCommitted(state: SheetState): boolean;
  commit(state: SheetState): void;
  /** Commits a state that takes back the last step as if it had never been: no way leads back to it. */
  retract(state: SheetState): void;
  /** @returns the state there, undefined at the end of the way */
  go(direction: "back" | "forth"): SheetState | undefined;
  /** Whether there is a step back, and one forth again. */
  ways(): { readonly back: boolean; readonly forth: boolean };
}

export function createUndoStack(start: SheetState): UndoStack {
  let committed = start;
  const [back, forth]: [SheetState[], SheetState[]] = [[], []];
  return {
    isCommitted: (state) => state === committed,
    commit(state) {
      if (state.changes !== committed.changes || state.origin !== committed.origin) {
        back.push(committed);
        forth.length = 0;
      }
      committed = state;
    },
    retract(state) {
      const before = back.at(-1);
      if (before?.origin === state.origin && sameChanges(before.changes, state.changes)) back.pop();
      committed = state;
    },
    go(direction) {
      const [from, to] = direction === "back" ? [back, forth] : [forth, back];
      const next = from.pop();
      if (!next) return undefined;
      to.push(committed);
      committed = next;
      return next;
    },
    ways: () => ({ back: back.length > 0, forth: forth.length > 0 }),
  };
}

const sameChanges = (a: SheetState["changes"], b: SheetState["changes"]): boolean =>
  a.size === b.size && [...a].every(([path, value]) => b.has(path) && b.get(path) === value);
