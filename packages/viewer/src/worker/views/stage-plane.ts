// The plane as it stands at a stage of the bench: which outlines there are, and what is still waste.

import {
  type Circle,
  type Outline,
  point,
  polygon,
  type Segment,
  transformOutline,
  transformSegment,
} from "@lamplane/geometry";
import { withValue } from "@lamplane/parameters/design";
import {
  type Blocks,
  blocksAt,
  cheekShape,
  type Elevation,
  elevation,
  stageExtent,
} from "@lamplane/parameters/elevation";
import { hasStack, isApart, type StageName, WORK_OF } from "../../protocol/build-steps.ts";

export interface StagePlane {
  readonly plane: Elevation;
  readonly blocks: Blocks;
  readonly front: Outline;
  readonly bed: Outline;
  readonly throat: Outline | undefined;
  /** What the two cuts leave between the blocks, before they are slid together. */
  readonly offcut: Outline | undefined;
  readonly rampChain: readonly Segment[];
  readonly bedChain: readonly Segment[];
  readonly cheek: Outline;
  readonly holes: readonly Circle[];
  readonly sole: number;
  /** Top at this stage, heel to toe. */
  readonly top: readonly Segment[];
  readonly isApart: boolean;
  readonly hasStack: boolean;
}

/** @throws Error (our bug) where the blocks cannot be drawn; the findings of such a design say so instead. */
export function stagePlane(plane: Elevation, stage: StageName): StagePlane {
  const shown = stage === "trued" ? withFlatTop(plane) : plane;
  const work = WORK_OF[stage];
  const state = work === "shaped" || work === "trued" ? "trued" : "blank";
  const blocks = blocksAt(shown, state);
  const apart = isApart(stage);
  const [toToe, toHeel] = apart ? [-shown.cuts.setInToe, shown.cuts.setInHeel] : [0, 0];
  const cheek = cheekShape(shown, state);
  const slid = (by: number) => ({ shift: point(by, 0) });
  const rampChain = blocks.rampChain.map((s) => transformSegment(s, slid(toToe)));
  const bedChain = blocks.bedChain.map((s) => transformSegment(s, slid(toHeel)));
  return {
    plane: shown,
    blocks,
    front: transformOutline(blocks.front, slid(toToe)),
    bed: transformOutline(blocks.bed, slid(toHeel)),
    throat: apart ? undefined : blocks.throat,
    offcut: apart ? throatOffcutOutline(rampChain, bedChain) : undefined,
    rampChain,
    bedChain,
    cheek: cheek.boundary,
    holes: cheek.circles,
    sole: stageExtent(shown, state).sole,
    top: stageExtent(shown, state).top,
    isApart: apart,
    hasStack: hasStack(stage),
  };
}

/** The plane with its sole trued and its top still flat; every other figure stays what it was. */
export function withFlatTop(plane: Elevation): Elevation {
  const fixed: [string, number | string | undefined][] = [
    ["pin.height", plane.pin.centre.y],
    ["wedge.length", plane.wedgeLength],
    ["ramp.radius", plane.ramp.curve?.radius],
    ["body.outline", "flat"],
  ];
  return elevation(
    fixed.reduce((d, [path, value]) => (value === undefined ? d : withValue(d, path, value)), plane.design),
  );
}

function throatOffcutOutline(ramp: readonly Segment[], bed: readonly Segment[]): Outline {
  const [rampFoot, bedFoot] = [ramp[0]!.from, bed[0]!.from];
  return polygon(rampFoot, bedFoot, ...bed.map((s) => s.to), ...ramp.map((s) => s.to).reverse());
}
