// The smallest set of changes with which nothing stops a plane any more.

import { withValue } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { planeOf } from "../history/as-built.ts";
import { openMends, shareOf, smallestStep } from "./cures.ts";
import type { Draft, Mend } from "./draft.ts";
import { drafts } from "./drafts.ts";
import type { Cure } from "./finding.ts";

/** More changes than these are another plane. */
const MOST_CHANGES = 4;
/** Beginnings that are followed further at each depth. */
const FOLLOWED = 4;

interface Beginning {
  readonly plane: Elevation;
  readonly cures: readonly Cure[];
  readonly stops: readonly Draft[];
  /** Sum of the shares of their ways that the changes go. */
  readonly cost: number;
}

const stopsOf = (plane: Elevation): Draft[] => drafts(plane).filter((draft) => draft.severity === "stop");

/**
 * The fewest changes, and among as few those that go the least part of their ways, after which no check stops the plane;
 * nothing where none is needed, undefined where none is found.
 */
export function wholeCure(plane: Elevation): readonly Cure[] | undefined {
  let beginnings: Beginning[] = [{ plane, cures: [], stops: stopsOf(plane), cost: 0 }];
  if (beginnings[0]!.stops.length === 0) return [];
  for (let depth = 1; depth <= MOST_CHANGES; depth++) {
    const next = beginnings.flatMap(continued);
    const whole = cheapest(next.filter(({ stops }) => stops.length === 0));
    if (whole[0]) return whole[0].cures;
    beginnings = cheapest(next).slice(0, FOLLOWED);
  }
  return undefined;
}

/** Fewest stops left first, then the smallest changes. */
const cheapest = (some: readonly Beginning[]): Beginning[] =>
  [...some].sort((a, b) => a.stops.length - b.stops.length || a.cost - b.cost);

/** Every change of one more parameter that leaves fewer kinds of stop than before, and none that was not there. */
function continued(beginning: Beginning): Beginning[] {
  const { plane, stops, cures, cost } = beginning;
  const used = new Set(cures.map(({ parameter }) => parameter));
  const mends = distinct(
    openMends(
      plane,
      stops.flatMap((stop) => stop.mends),
    ),
  ).filter(({ parameter }) => !used.has(parameter));
  const codes = new Set(stops.map(({ code }) => code));
  return mends.flatMap((mend) =>
    goals(stops.length).flatMap((goal) => {
      const heals = (design: Design) => {
        const left = stopsOf(planeOf(design));
        return left.length <= goal && left.every(({ code }) => codes.has(code));
      };
      const cure = smallestStep(plane, mend, heals);
      if (!cure) return [];
      const after = planeOf(withValue(plane.design, cure.parameter, cure.value));
      const whole = [...cures, cure];
      return [{ plane: after, cures: whole, stops: stopsOf(after), cost: cost + shareOf(plane, mend, cure) }];
    }),
  );
}

/** One stop fewer, or none at all. */
const goals = (count: number): number[] => [...new Set([count - 1, 0])];

const distinct = (mends: readonly Mend[]): Mend[] => [
  ...new Map(mends.map((mend) => [`${mend.parameter} ${mend.toward}`, mend])).values(),
];
