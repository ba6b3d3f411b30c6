// Whether faces make one closed solid: edges, loops, vertices, sides, Euler's count; and what it holds.
import { edgeMiss, surfaceMiss } from "./curves.ts";
import {
  boundArea,
  boundTurns,
  endOf,
  type Face,
  type FaceBound,
  faceFlux,
  type OrientedEdge,
  startOf,
} from "./faces.ts";
import { inner, minus, outer, type Vector } from "./vectors.ts";

/** How far what should coincide may stand apart, mm: what is left of it when coordinates are written with nine decimals. */
export const COINCIDENT = 2e-9;
/** How far a ring about a cylinder may be from a whole turn, in turns. */
const WHOLE_TURN = 1e-9;

export interface ShellReport {
  readonly faults: readonly string[];
  /** mm³ and mm². */
  readonly volume: number;
  readonly area: number;
  /** Holes through it, by Euler: V − E + F − (L − F) = 2 (1 − genus). */
  readonly genus: number;
  /** How far ends stand from their edges, and edges from their surfaces, at most, mm. */
  readonly miss: number;
  readonly surfaces: Readonly<Record<string, number>>;
}

export function judgeShell(faces: readonly Face[]): ShellReport {
  const bounds = faces.flatMap((face) => face.bounds.map((bound) => ({ face, bound })));
  const runs = bounds.flatMap(({ face, bound }) => bound.edges.map((oriented) => ({ face, oriented })));
  const edges = new Map(runs.map(({ oriented }) => [oriented.edge.number, oriented.edge]));
  const misses = [
    ...[...edges.values()].map((edge) => ({ of: `#${edge.number}: its ends`, by: edgeMiss(edge) })),
    ...runs.map(({ face, oriented: { edge } }) => ({
      of: `#${edge.number}: the edge of face #${face.number}`,
      by: surfaceMiss(edge, face.surface),
    })),
  ];
  const vertices = new Set([...edges.values()].flatMap(({ start, end }) => [start.number, end.number]));
  const genus = 1 - (vertices.size - edges.size + 2 * faces.length - bounds.length) / 2;
  const about = [...edges.values()][0]!.start.point;
  const volume = faces.reduce((sum, face) => sum + faceFlux(face, about), 0) / 3;
  return {
    faults: [
      ...edgeFaults(runs.map(({ oriented }) => oriented)),
      ...bounds.flatMap(({ face, bound }) => loopFaults(face, bound)),
      ...misses.filter(({ by }) => !(by <= COINCIDENT)).map(({ of, by }) => `${of} miss by ${by} mm`),
      ...faces.flatMap(sideFaults),
      ...(piecesOf(runs) === 1 ? [] : [`${piecesOf(runs)} shells in one`]),
      ...vertexFaults(bounds.map(({ bound }) => bound)),
      ...(genus >= 0 && Number.isInteger(genus) ? [] : [`Euler's count makes ${genus} holes through it`]),
      ...(volume > 0 ? [] : [`it holds ${volume} mm³: its faces look inward`]),
    ],
    volume,
    area: faces.reduce((sum, face) => sum + Math.abs(faceArea(face)), 0),
    genus,
    miss: Math.max(...misses.map(({ by }) => by)),
    surfaces: Object.fromEntries(
      ["plane", "cylinder", "cone"]
        .map((kind) => [kind, faces.filter(({ surface }) => surface.kind === kind).length] as const)
        .filter(([, count]) => count > 0),
    ),
  };
}

const faceArea = ({ bounds, surface }: Face): number =>
  bounds.reduce((sum, bound) => sum + boundArea(bound, surface), 0);

/** Every edge once in each sense. */
function edgeFaults(runs: readonly OrientedEdge[]): string[] {
  const count = (way: boolean) => {
    const counts = new Map<number, number>();
    for (const { edge, forward } of runs)
      if (forward === way) counts.set(edge.number, (counts.get(edge.number) ?? 0) + 1);
    return counts;
  };
  const [there, back] = [count(true), count(false)];
  return [...new Set([...there.keys(), ...back.keys()])]
    .filter((number) => there.get(number) !== 1 || back.get(number) !== 1)
    .map(
      (number) => `#${number}: run ${there.get(number) ?? 0} times in its sense, ${back.get(number) ?? 0} against it`,
    );
}

function loopFaults(face: Face, { edges }: FaceBound): string[] {
  return edges
    .filter((oriented, i) => endOf(oriented).number !== startOf(edges[(i + 1) % edges.length]!).number)
    .map(({ edge }) => `#${edge.number}: the loop of face #${face.number} is open after it`);
}

/** Loops counter-clockwise about the face's normal where they are outer, clockwise where they are inner, and those inside these. */
function sideFaults(face: Face): string[] {
  const { number, surface, sameSense, bounds } = face;
  const sense = sameSense ? 1 : -1;
  const faults: string[] = [];
  if (!(sense * faceArea(face) > 0)) faults.push(`face #${number}: its loops turn against its sense`);
  if (bounds.filter(({ isOuter }) => isOuter).length > 1) faults.push(`face #${number}: two outer bounds`);
  if (surface.kind === "plane") return [...faults, ...planeBoundFaults(face, sense)];
  const turns = bounds.map((bound) => boundTurns(bound, surface));
  const sum = turns.reduce((all, turn) => all + turn, 0);
  if (turns.some((turn) => Math.abs(turn - Math.round(turn)) > WHOLE_TURN) || Math.round(sum) !== 0)
    faults.push(`face #${number}: its loops turn ${turns.join(" and ")} times about the axis`);
  return faults;
}

function planeBoundFaults({ number, surface, bounds }: Face, sense: number): string[] {
  const areas = bounds.map((bound) => sense * boundArea(bound, surface));
  const around = bounds[areas.findIndex((area) => area > 0)];
  if (!around || areas.filter((area) => area > 0).length !== 1) return [`face #${number}: not one outer loop`];
  const within = bounds.filter((bound) => bound !== around);
  const n = surface.axes.z;
  return within.flatMap((hole) => {
    const p = startOf(hole.edges[0]!).point;
    const others = within.filter((other) => other !== hole && Math.round(windings(other, p, n)) !== 0);
    const isInside = Math.round(sense * windings(around, p, n)) === 1;
    return isInside && others.length === 0 ? [] : [`face #${number}: a hole outside its outline, or in another hole`];
  });
}

/** How often a loop in a plane runs around a point of it: the turn of each chord, and a whole turn for a point between chord and arc. */
function windings({ edges }: FaceBound, p: Vector, n: Vector): number {
  const turn = edges.reduce((sum, oriented) => {
    const [a, b] = [startOf(oriented).point, endOf(oriented).point];
    const [from, to] = [minus(a, p), minus(b, p)];
    const chord = Math.atan2(inner(n, outer(from, to)), inner(from, to));
    const { edge, forward } = oriented;
    if (edge.kind === "line") return sum + chord;
    const way = Math.sign(inner(edge.axis, n)) * (forward ? 1 : -1);
    const inDisc = Math.hypot(...minus(p, edge.centre)) < edge.radius;
    const beyondChord = a === b || way * inner(n, outer(minus(b, a), from)) > 0;
    return sum + chord + (inDisc && beyondChord ? way * 2 * Math.PI : 0);
  }, 0);
  return turn / (2 * Math.PI);
}

/** Pieces in which the faces hang together by their edges. */
function piecesOf(runs: readonly { readonly face: Face; readonly oriented: OrientedEdge }[]): number {
  const over = new Map<number, number>();
  const top = (n: number): number => (over.has(n) ? top(over.get(n)!) : n);
  const join = (a: number, b: number) => void (top(a) === top(b) || over.set(top(a), top(b)));
  for (const { face, oriented } of runs) join(face.number, oriented.edge.number);
  return new Set(runs.map(({ face }) => top(face.number))).size;
}

/** About each vertex the faces make one fan: from an edge that leaves it to the one before that in its loop, across, and on. */
function vertexFaults(bounds: readonly FaceBound[]): string[] {
  const key = ({ edge, forward }: OrientedEdge) => `${edge.number} ${forward}`;
  const against = ({ edge, forward }: OrientedEdge) => `${edge.number} ${!forward}`;
  const next = new Map<string, string>();
  const leaving = new Map<number, string[]>();
  for (const { edges } of bounds)
    edges.forEach((oriented, i) => {
      next.set(key(oriented), against(edges.at(i - 1)!));
      const { number } = startOf(oriented);
      leaving.set(number, [...(leaving.get(number) ?? []), key(oriented)]);
    });
  return [...leaving].flatMap(([number, keys]) => {
    const fan = new Set<string>();
    for (let at: string | undefined = keys[0]; at !== undefined && !fan.has(at); at = next.get(at)) fan.add(at);
    return fan.size === keys.length ? [] : [`#${number}: its faces make no one fan about it`];
  });
}
