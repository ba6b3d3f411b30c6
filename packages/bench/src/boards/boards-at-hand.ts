// The boards of a design or a shop file, each by itself.
import type { BoardEntry } from "@lamplane/parameters/table";
import type { Span } from "../span.ts";
import type { Board } from "./board.ts";

const ascending = ({ from, to }: Span): Span => ({ from: Math.min(from, to), to: Math.max(from, to) });

/** Of several alike each has a number behind its name. */
export const boardsAtHand = (entries: readonly BoardEntry[]): Board[] =>
  entries.flatMap(({ name, count, state, species, knots, ...rest }) =>
    Array.from(
      { length: count },
      (_, i): Board => ({
        ...rest,
        name: count > 1 ? `${name} ${i + 1}` : name,
        surfaced: state === "surfaced",
        ...(species === "same" ? {} : { species }),
        knots: knots.map(({ from, to, across }) => ({
          ...ascending({ from, to }),
          ...(across.from === 0 && across.to === 0 ? {} : { across: ascending(across) }),
        })),
      }),
    ),
  );
