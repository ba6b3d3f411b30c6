// What of a plane a router may cut: cheeks, blocks, blanks for wedge and pin, the recess with its block in the cradle, flat jigs.
import {
  boundsOf,
  line,
  type Outline,
  outlineArea,
  point,
  polygon,
  reverseOutline,
  tessellate,
  transformCircle,
  transformOutline,
} from "@lamplane/geometry";
import {
  cheekDrawing,
  crossPinDrawing,
  type Drawing,
  layBedBlock,
  layCheek,
  layerDrawing,
  layFrontBlock,
  layLayer,
  layWedge,
} from "@lamplane/parameters/drawings";
import {
  blocksAt,
  cheekShape,
  type Elevation,
  layerShapes,
  planeToBed,
  recessEdge,
  type Stage,
} from "@lamplane/parameters/elevation";
import { cradleLayout, jigPlans } from "@lamplane/parameters/jigs";
import { planeJigs } from "@lamplane/parameters/solids";
import { WORK_AFTER } from "@lamplane/parameters/table";
import { SET_UP_TITLES } from "../words/router.ts";
import { engravingOf } from "./engrave.ts";
import { type Feature, type FlatThing, flatSetUp, type RouterSetUp } from "./set-up.ts";

/** All set-ups, in the order of the build, the jigs last. */
export function planeSetUps(plane: Elevation): RouterSetUp[] {
  const stage = WORK_AFTER[plane.design.stage].drawn;
  const { margin } = plane.design.router;
  const layered = layers(plane, stage);
  const core = layered.length > 0 ? layered : blocks(plane, stage);
  const flat = [...cheeks(plane, stage), ...core, ...blanks(plane), ...jigs(plane)];
  return [...flat.map((thing) => flatSetUp(thing, margin)), ...(layered.length > 0 ? [] : recess(plane, stage))];
}

/** With their insides up, where the marks are. */
const cheeks = (plane: Elevation, stage: Stage): FlatThing[] =>
  (["left", "right"] as const).map((hand) => {
    const { outline, transform } = layCheek(plane, stage, hand);
    return {
      name: `cheek-${hand}`,
      title: SET_UP_TITLES.cheek[hand],
      outlines: [transformOutline(outline, transform)],
      circles: cheekShape(plane, stage).circles.map((circle) => transformCircle(circle, transform)),
      thickness: plane.widths.cheek,
      engraving: engravingOf(cheekDrawing(plane, stage, hand), plane.design),
    };
  });

const blocks = (plane: Elevation, stage: Stage): FlatThing[] =>
  [
    { name: "front-block", title: SET_UP_TITLES.block.front, part: layFrontBlock(plane, stage) },
    { name: "bed-block", title: SET_UP_TITLES.block.bed, part: layBedBlock(plane, stage) },
  ].map(({ name, title, part }) => ({
    name,
    title,
    outlines: [transformOutline(part.outline, part.transform)],
    circles: [],
    thickness: plane.widths.core,
  }));

/** The core's layers with their peg holes; none of a core in one piece. */
const layers = (plane: Elevation, stage: Stage): FlatThing[] =>
  layerShapes(plane, stage).map((layer) => {
    const { outline, transform } = layLayer(layer);
    return {
      engraving: engravingOf(layerDrawing(plane, stage, layer), plane.design),
      name: layer.name,
      title: SET_UP_TITLES.layer({ block: layer.block, number: layer.number }),
      outlines: [transformOutline(outline, transform)],
      circles: layer.shape.circles.map((circle) => transformCircle(circle, transform)),
      thickness: layer.to - layer.from,
    };
  });

/** Wedge and pin as flat blanks: the taper is planed and the tenons are rounded afterwards. */
function blanks(plane: Elevation): FlatThing[] {
  const { outline, transform } = layWedge(plane);
  const { min, max } = boundsOf(tessellate(transformOutline(outline, transform)));
  const width = plane.widths.core - plane.design.wedge.clearance;
  const wedge = polygon(point(0, 0), point(max.x - min.x, 0), point(max.x - min.x, width), point(0, width));
  const pin = cutOutlines(crossPinDrawing(plane));
  return [
    { name: "wedge-blank", title: SET_UP_TITLES.wedge, outlines: [wedge], circles: [], thickness: max.y - min.y },
    { name: "pin-blank", title: SET_UP_TITLES.pin, outlines: pin, circles: [], thickness: plane.pinSize.diameter },
  ];
}

const cutOutlines = ({ entries }: Drawing): Outline[] =>
  entries.flatMap((entry) => (entry.kind === "outline" && entry.work === "CUT" ? [entry.outline] : []));

/** Jigs that are drawn for sheet, as thick as they are drawn. One that is partly routed from above keeps its pockets for the bench. */
const jigs = (plane: Elevation): FlatThing[] =>
  jigPlans(plane).flatMap(({ name, title, drawing: plain, bodies, plate }): FlatThing[] => {
    if (!plain || bodies.length !== 1) return [];
    const drawing = engraves(plane) ? lettered(plane, name, plain) : plain;
    const circles = drawing.entries.flatMap((entry) =>
      entry.kind === "circle" && entry.work === "DRILL" && entry.depth === undefined ? [entry.circle] : [],
    );
    return [
      {
        name: `jig-${name}`,
        title,
        outlines: cutOutlines(drawing),
        circles,
        thickness: drawing.thickness ?? bodies[0]!.thickness,
        engraving: engravingOf(drawing, plane.design),
        ...(plate && { plates: plate.layers }),
      },
    ];
  });

const engraves = ({ design }: Elevation): boolean => design.router.engraving > 0;

/** A jig's drawing with its letters as lines, which only its solid knows. */
const lettered = (plane: Elevation, name: string, plain: Drawing): Drawing =>
  planeJigs(plane, (jig) => jig.name === name)[0]?.drawing ?? plain;

/** How far the recess's way runs out over the top of the bed, mm. */
const RUN_OUT = 30;

/** The bed block lies in its cradle with its bed level: zero at the bed's tip and the block's right side, x up the bed. */
function recess(plane: Elevation, stage: Stage): RouterSetUp[] {
  if (!plane.recess) return [];
  const last = blocksAt(plane, stage).bedChain.at(-1)!;
  const [low, high] = [planeToBed(plane.frame, last.from).s, planeToBed(plane.frame, last.to).s];
  const half = plane.widths.core / 2;
  const edge = recessEdge(plane.recess, high + RUN_OUT);
  const open = [...edge, line(edge.at(-1)!.to, edge[0]!.from)];
  const outline = transformOutline(outlineArea(open) > 0 ? open : reverseOutline(open), { shift: point(-low, half) });
  const feature: Feature = { kind: "pocket", outline, depth: plane.recess.depth };
  return [
    {
      name: "recess",
      title: SET_UP_TITLES.recess,
      stock: {
        width: high - low,
        depth: 2 * half,
        thickness: Math.max(2 * plane.recess.depth, plane.recess.depth + 10),
      },
      corner: { x: 0, y: 0 },
      features: [feature],
      holding: "cradle",
      height: -cradleLayout(plane).base,
    },
  ];
}
