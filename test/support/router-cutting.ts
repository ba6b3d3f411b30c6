// What a router's program leaves of its stock, judged apart from what wrote it: the moves are those of Debian's RS-274
// interpreter (linuxcnc-uspace, `rs274 -g`), the regions are Clipper2's.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { circleOutline, type Outline, type Point, type Segment, tessellate } from "@lamplane/geometry";
import { Clipper, EndType, FillRule, JoinType, type Paths64, PointInPolygonResult } from "clipper2-ts";
import type { Program } from "../../packages/export/src/router/program.ts";
import { featureOutline } from "../../packages/export/src/router/set-up.ts";
import { faultsOfRunning } from "./router-running.ts";

interface CanonicalMove {
  readonly kind: "traverse" | "feed";
  readonly section: number;
  /** Points in mm, the first where the move begins. */
  readonly points: readonly { readonly x: number; readonly y: number; readonly z: number }[];
}

/** Bytes: a line of some hundred for each move. */
const MOST_OUTPUT = 1 << 28;

/** The interpreter's moves, or what it has to say. Sections are parted by stops and cutter changes. */
export function canonicalMoves(text: string): { moves: CanonicalMove[]; complaint: string } {
  const { out, complaint } = canonicalOutput(text);
  return { moves: complaint === "" ? parseMoves(out) : [], complaint };
}

/** All that the interpreter prints, a canonical command a line, or what it has to say. */
export function canonicalOutput(text: string): { out: string; complaint: string } {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-rs274-"));
  try {
    const file = join(folder, "program.ngc");
    writeFileSync(file, text);
    const tools = join(folder, "tool.tbl");
    writeFileSync(tools, TOOLS);
    const out = execFileSync("rs274", ["-t", tools, "-g", file], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "pipe"],
      maxBuffer: MOST_OUTPUT,
      env: { ...process.env, HOME: folder }, // its tool table is a file there, which no other run may share
    });
    return { out, complaint: /PROGRAM_END/.test(out) ? "" : "does not end" };
  } catch (error) {
    const { message, status, signal } = error as { message: string; status?: number; signal?: string };
    return { out: "", complaint: `${message} (status ${status}, signal ${signal})` };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A control's tool table: every cutter has a length of its own. */
const TOOLS = Array.from({ length: 12 }, (_, i) => `T${i + 1} P${i + 1} Z${50 + 7 * i}\n`).join("");

const CHORD = 0.0015; // mm: well within what a part may lose

function parseMoves(out: string): CanonicalMove[] {
  let [at, scale, section] = [{ x: 0, y: 0, z: 0 }, 1, 0];
  const moves: CanonicalMove[] = [];
  for (const line of out.split("\n")) {
    const [, name, list] = /(\w+)\((.*)\)\s*$/.exec(line) ?? [];
    const n = (list ?? "").split(",").map((text) => Number(text) * scale);
    if (name === "USE_LENGTH_UNITS") scale = list === "CANON_UNITS_INCHES" ? 25.4 : 1;
    if ((name === "PROGRAM_STOP" || name === "CHANGE_TOOL") && moves.at(-1)?.section === section) section += 1;
    if (name === "STRAIGHT_TRAVERSE" || name === "STRAIGHT_FEED") {
      const to = { x: n[0]!, y: n[1]!, z: n[2]! };
      moves.push({ kind: name === "STRAIGHT_FEED" ? "feed" : "traverse", section, points: [at, to] });
      at = to;
    }
    if (name === "ARC_FEED") {
      const turns = Number((list ?? "").split(",")[4]);
      const points = arcPoints(at, { x: n[0]!, y: n[1]!, z: n[5]! }, { x: n[2]!, y: n[3]! }, turns);
      moves.push({ kind: "feed", section, points });
      at = points.at(-1)!;
    }
  }
  return moves;
}

/** @param turns 1 counter-clockwise, -1 clockwise */
function arcPoints(from: { x: number; y: number; z: number }, to: typeof from, centre: Point, turns: number) {
  const [a, b] = [from, to].map((p) => Math.atan2(p.y - centre.y, p.x - centre.x)) as [number, number];
  const full = 2 * Math.PI;
  const sweep = (((turns > 0 ? b - a : a - b) % full) + full) % full || full;
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const count = Math.max(2, Math.ceil(sweep / (2 * Math.acos(1 - Math.min(1, CHORD / radius)))));
  return Array.from({ length: count + 1 }, (_, i) => {
    if (i === 0) return from;
    if (i === count) return to;
    const angle = a + (Math.sign(turns) * sweep * i) / count;
    const z = from.z + ((to.z - from.z) * i) / count;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle), z };
  });
}

const SCALE = 1e4; // Clipper2 counts in whole numbers: a tenth of a micrometre
const ROUND = { miter: 2, arc: CHORD * SCALE } as const;
const pathOf = (points: readonly Point[]) =>
  points.map(({ x, y }) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) }));
const pathsOf = (outlines: readonly Outline[]): Paths64 =>
  outlines.map((outline) => pathOf(tessellate(outline, CHORD)));
const grow = (paths: Paths64, by: number): Paths64 =>
  Clipper.inflatePaths(paths, by * SCALE, JoinType.Round, EndType.Polygon, ROUND.miter, ROUND.arc);
const less = (a: Paths64, b: Paths64): Paths64 => Clipper.difference(a, b, FillRule.NonZero);
const both = (a: Paths64, b: Paths64): Paths64 => Clipper.intersect(a, b, FillRule.NonZero);
const areaOf = (paths: Paths64): number => Clipper.areaPaths(paths) / SCALE ** 2;
const disc = (centre: Point, radius: number): Paths64 => pathsOf([circleOutline({ centre, radius })]);

/** Ways of each cutter on which its tip is at a height or below, mm under the stock's top. */
const waysAt = (moves: readonly CanonicalMove[], sections: number, z: number): Point[][][] =>
  Array.from({ length: sections }, (_, section) =>
    deepParts(
      moves
        .filter((move) => move.kind === "feed" && move.section === section)
        .flatMap(({ points }) => [...points, GAP]),
      z,
    ),
  );

/** What a cutter covers along lines. */
const along = (lines: readonly (readonly Segment[])[], radius: number): Paths64 =>
  lines.length === 0
    ? []
    : Clipper.inflatePaths(
        lines.map((line) =>
          pathOf([line[0]!.from, ...line.flatMap((s) => tessellate([s], CHORD).slice(1).concat(s.to))]),
        ),
        radius * SCALE,
        JoinType.Round,
        EndType.Round,
        ROUND.miter,
        ROUND.arc,
      );

/** All that the cutters have taken on their ways. */
function sweptBy(ways: readonly Point[][][], radii: readonly number[]): Paths64 {
  const swept = ways.flatMap((paths, section) =>
    paths.length === 0
      ? []
      : Clipper.inflatePaths(
          paths.map(pathOf),
          radii[section]! * SCALE,
          JoinType.Round,
          EndType.Round,
          ROUND.miter,
          ROUND.arc,
        ),
  );
  return Clipper.union(swept, FillRule.NonZero);
}

/** Parts the moves of a way, where one does not begin where the last ended. */
const GAP = { x: Number.NaN, y: Number.NaN, z: Number.NaN };

/** A stretch by its ends, either way. */
const stretchKey = (a: Point, b: Point): string =>
  [a, b]
    .map(({ x, y }) => `${x.toFixed(4)},${y.toFixed(4)}`)
    .sort()
    .join(" ");

/** Pieces of a way on which the cutter's tip is at a height or below; once what it goes over again. */
function deepParts(points: CanonicalMove["points"], z: number): Point[][] {
  const stretches = points.flatMap((to, i) => {
    const from = points[i - 1];
    if (!from || Number.isNaN(from.z + to.z) || Math.min(from.z, to.z) > z) return [];
    return [{ from, to, key: stretchKey(from, to), isWhole: Math.max(from.z, to.z) <= z }];
  });
  const whole = new Set(stretches.filter(({ isWhole }) => isWhole).map(({ key }) => key));
  const seen = new Set<string>();
  const parts: Point[][] = [];
  let end: Point | undefined;
  for (const { from, to, key, isWhole } of stretches) {
    if (isWhole ? seen.has(key) : whole.has(key)) continue;
    seen.add(key);
    const cut = (share: number): Point => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    });
    const share = from.z === to.z ? 0 : (z - from.z) / (to.z - from.z);
    const [first, last] = isWhole ? [from, to] : from.z <= z ? [from, cut(share)] : [cut(share), to];
    if (end && Math.hypot(end.x - first.x, end.y - first.y) < 1e-9) parts.at(-1)!.push(last);
    else parts.push([first, last]);
    end = last;
  }
  return parts;
}

const NEAR = 0.01; // mm: what may be gone of a part, or be left beside it
const SURELY_GONE = NEAR - 3 * CHORD; // what shows as gone, where arcs of part, way and cutter are all short by a chord's height
const RING = 0.4; // mm: how far beside the part all must be gone

export interface Judged {
  readonly area: { readonly width: number; readonly depth: number; readonly height: number };
  readonly tabs: { readonly width: number; readonly height: number };
  /** Height of the stock's top over the program's zero. */
  readonly top: number;
  /** Over the stock's top, mm: the least between cuts, the least at start, stops and end. */
  readonly heights: { readonly rapid: number; readonly park: number };
}

/** All that is wrong with what a program leaves; nothing where it leaves the part, its bridges and its named corners. */
export function faultsOfCutting(text: string, program: Program, { area, tabs, top, heights }: Judged): string[] {
  const { moves: read, complaint } = canonicalMoves(text);
  if (complaint !== "") return [`interpreter: ${complaint}`];
  const laws = faultsOfRunning(text, { top, cutters: program.toolpaths.length, ...heights });
  const moves = read.map((move) => ({ ...move, points: move.points.map((p) => ({ ...p, z: p.z - top })) }));
  return [...laws, ...faultsOfTravel(moves, program, area), ...faultsByLevel(moves.slice(1), program, tabs)];
}

function faultsOfTravel(moves: readonly CanonicalMove[], { setUp }: Program, area: Judged["area"]): string[] {
  const { stock, corner, height } = setUp;
  const rapids = moves.slice(1).filter(({ kind }) => kind === "traverse");
  const low = rapids.filter(({ points }) => points.some(({ z }) => z < -1e-6));
  const points = moves.slice(2).flatMap((move) => move.points);
  const span = (pick: (p: Point) => number, corner: number, size: number): number => {
    const values = [...points.map(pick), corner, corner + size];
    return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
  };
  const out =
    span((p) => p.x, corner.x, stock.width) > area.width ||
    span((p) => p.y, corner.y, stock.depth) > area.depth ||
    height + points.reduce((top, { z }) => Math.max(top, z), 0) > area.height + 1e-6;
  return [
    ...(low.length > 0 ? [`${low.length} rapids below the stock's top`] : []),
    ...(out ? ["out of the travel"] : []),
  ];
}

function faultsByLevel(moves: readonly CanonicalMove[], program: Program, tabs: Judged["tabs"]): string[] {
  const { setUp, toolpaths } = program;
  const radii = toolpaths.map(({ cutter }) => cutter.diameter / 2);
  const judge = levelJudge(program, tabs, Math.max(...radii));
  const known = new Map<string, string[]>(); // by what is cut and what is wanted, which are the same at many heights
  return levelsOf(setUp, tabs).flatMap((z) => {
    const ways = waysAt(moves, radii.length, z);
    const key = JSON.stringify([ways, setUp.features.map(({ depth }) => -z < depth), hasTabsAt(program, tabs, z)]);
    const found = known.get(key) ?? judge(sweptBy(ways, radii), z);
    known.set(key, found);
    return found.map((fault) => `${fault} at z ${z.toFixed(2)}`);
  });
}

const hasTabsAt = ({ setUp }: Program, { height }: Judged["tabs"], z: number): boolean =>
  setUp.features.some(({ kind }) => kind === "outer") && z < height - setUp.stock.thickness;

/** What is wrong with all that the cutters have taken at a height. */
function levelJudge(program: Program, tabs: Judged["tabs"], radius: number) {
  const { setUp, toolpaths } = program;
  const pockets = setUp.features.filter(({ kind }) => kind !== "outer");
  const outer = pathsOf(setUp.features.flatMap((f) => (f.kind === "outer" ? [f.outline] : [])));
  const ring = outer.length > 0 ? less(grow(outer, RING), grow(outer, NEAR)) : [];
  const corners = program.cornersLeft.flatMap(({ at, along }) => disc(at, along + 0.05));
  const engraver = Math.min(...toolpaths.map(({ cutter }) => cutter.diameter / 2));
  const bridges = program.tabs.flatMap((at) => disc(at, tabs.width / 2 + radius + 0.5));
  return (swept: Paths64, z: number): string[] => {
    const here = pockets.filter(({ depth }) => -z < depth);
    const lines = here.flatMap((f) => (f.kind === "engraving" ? f.paths : []));
    const grooves = along(lines, engraver);
    const open = [...pathsOf(here.flatMap(featureOutline)), ...grooves];
    const hasTabs = hasTabsAt(program, tabs, z);
    const stock = outer.length > 0 ? outer : rectangleOf(setUp);
    const gouge = areaOf(both(swept, grow(less(stock, open), -SURELY_GONE)));
    const all = Clipper.union([...ring, ...grow(open, -NEAR)], FillRule.NonZero);
    const wanted = less(all, [...(hasTabs ? bridges : []), ...corners]);
    const left = areaOf(grow(less(both(wanted, rectangleOf(setUp)), swept), -0.003));
    return [
      ...(gouge > 1e-4 ? [`gouge of ${gouge.toFixed(4)} mm²`] : []),
      ...(left > 1e-4 ? [`${left.toFixed(4)} mm² left`] : []),
      ...(hasTabs ? lostTabs(swept, program, tabs, radius) : []),
    ];
  };
}

/** Heights at which anything begins or ends, just above and just below, and the middle; below 0, none under the stock. */
function levelsOf({ features, stock }: Program["setUp"], tabs: Judged["tabs"]): number[] {
  const ends = [...new Set(features.map(({ depth }) => depth))];
  const deepest = Math.max(...ends);
  const beside = ends.flatMap((depth) => (depth < stock.thickness ? [depth - 0.05, depth + 0.05] : [depth - 0.05]));
  const heights = [0.05, deepest / 2, deepest - tabs.height - 0.05, ...beside].map((z) => Math.max(0.01, z));
  return [...new Set(heights)].sort((a, b) => a - b).map((z) => -z);
}

const rectangleOf = ({ stock, corner: { x, y } }: Program["setUp"]): Paths64 => [
  pathOf([
    { x, y },
    { x: x + stock.width, y },
    { x: x + stock.width, y: y + stock.depth },
    { x, y: y + stock.depth },
  ]),
];

/** Every bridge stands across the cutter's way in its full width, and what is left of the stock is one piece with the part. */
function lostTabs(
  swept: Paths64,
  { setUp, tabs: middles }: Program,
  { width }: Judged["tabs"],
  radius: number,
): string[] {
  const outlines = setUp.features.flatMap((f) => (f.kind === "outer" ? [f.outline] : []));
  const lost = middles.filter((middle) => {
    const across = less(disc(middle, Math.min(radius, width / 2) - 0.05), pathsOf(outlines));
    return areaOf(both(across, swept)) > 1e-3;
  });
  const rest = less(rectangleOf(setUp), swept);
  const loose = outlines.filter((outline) => {
    const [inside] = pathOf([outline[0]!.from]);
    const holders = rest.filter(
      (path) => Clipper.area(path) > 0 && Clipper.pointInPolygon(inside!, path) !== PointInPolygonResult.IsOutside,
    );
    return (
      holders.length < 1 ||
      !holders.some((path) => Math.abs(Clipper.area(path)) > 0.9 * areaOf(rectangleOf(setUp)) * SCALE ** 2)
    );
  });
  return [
    ...(middles.length < 2 * outlines.length ? ["fewer than two bridges"] : []),
    ...(lost.length > 0 ? [`${lost.length} bridges lost`] : []),
    ...(loose.length > 0 ? ["the part is loose"] : []),
  ];
}
