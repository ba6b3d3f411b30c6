// The smallest set of changes with which nothing stops a plane any more.

import { withValue } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { Cure } from "../finding.ts";
import { asBuiltPlane } from "../history/as-built.ts";
import { applicableRemedies, shareOfRange, smallestCure } from "./cures.ts";
import type { Judgement } from "./judgement.ts";
import { stopJudgements } from "./judgements.ts";
import type { Remedy } from "./remedy.ts";

/** More changes than these are another plane. */
const MOST_CHANGES = 4;
/** Beginnings that are followed further at each depth. */
const BEAM_WIDTH = 4;

interface SearchNode {
  readonly plane: Elevation;
  readonly cures: readonly Cure[];
  readonly stops: readonly Judgement[];
  /** Sum of the shares of their ways that the changes go. */
  readonly cost: number;
}

/**
 * The fewest changes, and among as few those that go the least part of their ways, after which no check stops the plane;
 * nothing where none is needed, undefined where none is found.
 */
export function findRepair(plane: Elevation): readonly Cure[] | undefined {
  let nodes: SearchNode[] = [{ plane, cures: [], stops: stopJudgements(plane), cost: 0 }];
  if (nodes[0]!.stops.length === 0) return [];
  for (let depth = 1; depth <= MOST_CHANGES; depth++) {
    const next = nodes.flatMap(expandNode);
    const whole = sortByCost(next.filter(({ stops }) => stops.length === 0));
    if (whole[0]) return whole[0].cures;
    nodes = sortByCost(next).slice(0, BEAM_WIDTH);
  }
  return undefined;
}

/** Fewest stops left first, then the smallest changes. */
const sortByCost = (some: readonly SearchNode[]): SearchNode[] =>
  [...some].sort((a, b) => a.stops.length - b.stops.length || a.cost - b.cost);

/** Every change of one more parameter that leaves fewer kinds of stop than before, and none that was not there. */
function expandNode(node: SearchNode): SearchNode[] {
  const { plane, stops, cures, cost } = node;
  const used = new Set(cures.map(({ parameter }) => parameter));
  const remedies = distinctRemedies(
    applicableRemedies(
      plane,
      stops.flatMap((stop) => stop.remedies),
    ),
  ).filter(({ parameter }) => !used.has(parameter));
  const codes = new Set(stops.map(({ code }) => code));
  return remedies.flatMap((remedy) =>
    stopGoals(stops.length).flatMap((goal) => {
      const resolves = (design: Design) => {
        const left = stopJudgements(asBuiltPlane(design));
        return left.length <= goal && left.every(({ code }) => codes.has(code));
      };
      const cure = smallestCure(plane, remedy, resolves);
      if (!cure) return [];
      const after = asBuiltPlane(withValue(plane.design, cure.parameter, cure.value));
      const whole = [...cures, cure];
      return [
        { plane: after, cures: whole, stops: stopJudgements(after), cost: cost + shareOfRange(plane, remedy, cure) },
      ];
    }),
  );
}

/** One stop fewer, or none at all. */
const stopGoals = (count: number): number[] => [...new Set([count - 1, 0])];

const distinctRemedies = (remedies: readonly Remedy[]): Remedy[] => [
  ...new Map(remedies.map((remedy) => [`${remedy.parameter} ${remedy.toward}`, remedy])).values(),
];
