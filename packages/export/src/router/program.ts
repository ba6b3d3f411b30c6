// A set-up → what each cutter does, in the order drill, pocket, engrave, round the part; or what keeps it from being cut.
import { circleOutline, type Outline, offsetOutline, type Point } from "@lamplane/geometry";
import type { Cutter, Design } from "@lamplane/parameters/table";
import { DRILL_FIT, drillHole } from "./bore.ts";
import { cornersLeft } from "./corners.ts";
import { crossedLoop } from "./crossing.ts";
import { engrave, engraverOf, WIDEST_ENGRAVER } from "./engrave.ts";
import type { CornerLeft, LimitCode, RouterLimit } from "./limit.ts";
import { cutPocket, fitsPocket } from "./pocket.ts";
import { cutProfile } from "./profile.ts";
import { type Engraving, type Feature, isThrough, type RouterSetUp } from "./set-up.ts";
import { placeTabs, tabRun } from "./tabs.ts";
import { cuttingTime, type Toolpath, ToolpathWriter, toolpathBounds } from "./toolpath.ts";

type RouterRule = Design["router"];

export interface Program {
  readonly setUp: RouterSetUp;
  readonly toolpaths: readonly Toolpath[];
  readonly tabs: readonly Point[];
  readonly cornersLeft: readonly CornerLeft[];
  /** Minutes, without the time to speed up, slow down and change cutters. */
  readonly minutes: number;
}
export type ProgramResult = { readonly program: Program } | { readonly limit: RouterLimit };

interface Operation {
  readonly kind: "drill" | "pocket" | "engraving" | "outer";
  readonly cutter: Cutter;
  readonly cut: (to: ToolpathWriter) => void;
  readonly tabs?: readonly Point[];
  readonly cornersLeft?: readonly CornerLeft[];
}
type OperationResult = Operation | { readonly code: LimitCode; readonly value: number; readonly limit: number };

export function planProgram(setUp: RouterSetUp, router: RouterRule, cutters: readonly Cutter[]): ProgramResult {
  const limitOf = (code: LimitCode, value: number, limit: number): ProgramResult => ({
    limit: { setUp: setUp.name, title: setUp.title, code, value, limit },
  });
  const operations: Operation[] = [];
  for (const feature of setUp.features) {
    const planned = planFeature(setUp, feature, router, cutters);
    if ("code" in planned) return limitOf(planned.code, planned.value, planned.limit);
    operations.push(planned);
  }
  const toolpaths = byCutter(inOrder(operations, cutters)).map(([cutter, cuts]) => {
    const to = new ToolpathWriter(cutter, router);
    for (const { cut } of cuts) cut(to);
    return to.done();
  });
  const drive = cutterLimit(toolpaths, router);
  if (drive) return limitOf(drive.code, drive.value, drive.limit);
  const travel = travelLimit(setUp, toolpaths, router);
  if (travel) return limitOf(travel.code, travel.value, travel.limit);
  return {
    program: {
      setUp,
      toolpaths,
      tabs: operations.flatMap(({ tabs = [] }) => tabs),
      cornersLeft: operations.flatMap(({ cornersLeft: left = [] }) => left),
      minutes: toolpaths.reduce((sum, path) => sum + cuttingTime(path), 0),
    },
  };
}

const ORDER: readonly Operation["kind"][] = ["drill", "pocket", "engraving", "outer"];

/** Drill, pocket, engrave, round the part; within each by cutter, so that few are changed: one that goes round a part too cuts the last pockets, and goes round first. */
function inOrder(operations: readonly Operation[], cutters: readonly Cutter[]): Operation[] {
  const of = (kind: Operation["kind"]) => operations.filter((each) => each.kind === kind).map(({ cutter }) => cutter);
  const [pockets, outers] = [of("pocket"), of("outer")];
  const shared = outers.find((cutter) => pockets.includes(cutter)) ?? outers[0];
  const rank = ({ kind, cutter }: Operation): number => {
    if (cutter !== shared) return cutters.indexOf(cutter);
    return kind === "outer" ? -1 : cutters.length;
  };
  return operations.toSorted((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind) || rank(a) - rank(b));
}

/** Operations that follow each other with one cutter, together. */
function byCutter(operations: readonly Operation[]): [Cutter, Operation[]][] {
  const groups: [Cutter, Operation[]][] = [];
  for (const operation of operations) {
    const last = groups.at(-1);
    if (last?.[0] === operation.cutter) last[1].push(operation);
    else groups.push([operation.cutter, [operation]]);
  }
  return groups;
}

function planFeature(
  setUp: RouterSetUp,
  feature: Feature,
  router: RouterRule,
  cutters: readonly Cutter[],
): OperationResult {
  if (feature.kind === "engraving") return planEngraving(feature, router, cutters);
  const depth = isThrough(setUp, feature) ? setUp.stock.thickness + router.through : feature.depth;
  if (feature.kind === "hole") {
    const drill = cutters.find(
      ({ kind, diameter, cutting }) =>
        kind === "drill" && Math.abs(diameter - 2 * feature.circle.radius) <= DRILL_FIT && cutting >= depth,
    );
    if (drill) return { kind: "drill", cutter: drill, cut: (to) => drillHole(to, feature.circle, depth) };
  }
  const crossed = feature.kind === "hole" ? 0 : crossedLoop(feature.outline);
  if (crossed > 0) return { code: "crossing", value: crossed, limit: 0 };
  const mills = cutters.filter(({ kind }) => kind === "end");
  const reaching = mills.filter(({ cutting }) => cutting >= depth);
  if (mills.length === 0) return { code: "no-end-mill", value: 0, limit: 1 };
  if (reaching.length === 0)
    return { code: "reach", value: Math.max(...mills.map(({ cutting }) => cutting)), limit: depth };
  if (feature.kind === "outer") return planProfile(setUp, feature.outline, depth, router, reaching);
  const outline = feature.kind === "hole" ? circleOutline(feature.circle) : feature.outline;
  return planPocket(outline, depth, router, reaching);
}

function planEngraving(engraving: Engraving, router: RouterRule, cutters: readonly Cutter[]): OperationResult {
  const found = engraverOf(cutters);
  if ("finest" in found) return { code: "engraver", value: found.finest, limit: WIDEST_ENGRAVER };
  return { kind: "engraving", cutter: found.cutter, cut: (to) => engrave(to, engraving, router.rampAngle) };
}

function planPocket(outline: Outline, depth: number, router: RouterRule, mills: readonly Cutter[]): OperationResult {
  const fitting = mills.filter((mill) => fitsPocket(outline, mill));
  const cutter = leavingLeast(fitting, (mill) => cornersLeft(outline, -mill.diameter / 2));
  if (!cutter)
    return {
      code: "opening",
      value: narrowest(outline, mills),
      limit: Math.min(...mills.map(({ diameter }) => diameter)),
    };
  return {
    kind: "pocket",
    cutter,
    cut: (to) => cutPocket(to, outline, depth, router),
    cornersLeft: cornersLeft(outline, -cutter.diameter / 2),
  };
}

/** The widest cutter that would fit, to a twentieth of a millimetre. */
function narrowest(outline: Outline, mills: readonly Cutter[]): number {
  let [fits, not] = [0, Math.min(...mills.map(({ diameter }) => diameter))];
  while (not - fits > 0.05) {
    const diameter = (fits + not) / 2;
    if (fitsPocket(outline, { diameter })) fits = diameter;
    else not = diameter;
  }
  return fits;
}

function planProfile(
  { stock }: RouterSetUp,
  outline: Outline,
  depth: number,
  router: RouterRule,
  mills: readonly Cutter[],
): OperationResult {
  const cutter = leavingLeast(mills, (mill) => cornersLeft(outline, mill.diameter / 2))!;
  const places = placeTabs(outline, offsetOutline(outline, cutter.diameter / 2), router.tabs, cutter.diameter);
  if ("longestRun" in places)
    return { code: "tab-run", value: places.longestRun, limit: tabRun(router.tabs, cutter.diameter) };
  const { tabs } = places;
  const tabTop = Math.min(0, router.tabs.height - stock.thickness);
  return {
    kind: "outer",
    cutter,
    cut: (to) => cutProfile(to, { outline, depth, tabs, tabTop }, router),
    tabs,
    cornersLeft: cornersLeft(outline, cutter.diameter / 2),
  };
}

/** The cutter that leaves least in the corners, to a tenth of a millimetre; of those that leave the same, the stoutest. */
function leavingLeast(mills: readonly Cutter[], left: (mill: Cutter) => readonly CornerLeft[]): Cutter | undefined {
  const ranked = mills.map((mill) => ({
    mill,
    gap: Math.round(Math.max(0, ...left(mill).map(({ gap }) => gap)) * 10),
  }));
  return ranked.toSorted((a, b) => a.gap - b.gap || b.mill.diameter - a.mill.diameter)[0]?.mill;
}

/** Cutters turned no faster than the spindle may, and sent no deeper in a pass than they have edges. */
function cutterLimit(
  toolpaths: readonly Toolpath[],
  { maxSpeed }: RouterRule,
): { code: LimitCode; value: number; limit: number } | undefined {
  const cutters = toolpaths.map(({ cutter }) => cutter);
  const fast = cutters.find(({ speed }) => speed > maxSpeed);
  if (fast) return { code: "speed", value: fast.speed, limit: maxSpeed };
  const deep = cutters.find(({ step, cutting }) => step > cutting);
  return deep && { code: "step", value: deep.step, limit: deep.cutting };
}

/** Cutter's way and stock within the machine's travel. */
function travelLimit(
  { corner, height, stock }: RouterSetUp,
  toolpaths: readonly Toolpath[],
  { area, parkHeight, rapidHeight }: RouterRule,
): { code: LimitCode; value: number; limit: number } | undefined {
  const { min, max } = toolpathBounds(toolpaths);
  const width = Math.max(max.x, corner.x + stock.width) - Math.min(min.x, corner.x);
  const depth = Math.max(max.y, corner.y + stock.depth) - Math.min(min.y, corner.y);
  const sizes = [
    { code: "travel-x", value: width, limit: area.width },
    { code: "travel-y", value: depth, limit: area.depth },
    { code: "travel-z", value: height + Math.max(parkHeight, rapidHeight), limit: area.height },
  ] as const;
  return sizes.find(({ value, limit }) => value > limit);
}
