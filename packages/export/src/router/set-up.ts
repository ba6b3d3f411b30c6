// What a router cuts without being set up anew: a part or jig in its stock, as flat features with their depths.
import {
  boundsOf,
  type Circle,
  circleOutline,
  type Outline,
  outlineArea,
  point,
  polygonHolds,
  reverseOutline,
  type Segment,
  type Transform2,
  tessellate,
  transformCircle,
  transformOutline,
  transformSegment,
} from "@lamplane/geometry";

export type Feature =
  | { readonly kind: "hole"; readonly circle: Circle; readonly depth: number }
  /** Everything within the outline, which runs counter-clockwise. */
  | { readonly kind: "pocket"; readonly outline: Outline; readonly depth: number }
  /** Lines and letters, each along its middle. */
  | { readonly kind: "engraving"; readonly paths: readonly (readonly Segment[])[]; readonly depth: number }
  /** Round the outline of a part, which runs counter-clockwise. */
  | { readonly kind: "outer"; readonly outline: Outline; readonly depth: number };

export interface Stock {
  readonly width: number;
  readonly depth: number;
  readonly thickness: number;
}

export type Holding = "tabs" | "cradle";

/** Features in mm from the set-up's zero, z of the stock's top 0. */
export interface RouterSetUp {
  /** Kebab-case, which is also its file's name. */
  readonly name: string;
  readonly title: string;
  readonly stock: Stock;
  /** Lower left corner of the stock. */
  readonly corner: { readonly x: number; readonly y: number };
  readonly features: readonly Feature[];
  readonly holding: Holding;
  /** Height of the stock's top over the spoilboard. */
  readonly height: number;
  /** How many of it are cut and glued face to face to one jig; one where absent. */
  readonly plates?: number;
}

/** What a feature leaves standing or takes out, seen from above; none of what is engraved. */
export function featureOutline(feature: Feature): Outline[] {
  if (feature.kind === "engraving") return [];
  return [feature.kind === "hole" ? circleOutline(feature.circle) : feature.outline];
}

export const isThrough = ({ stock }: RouterSetUp, { depth }: Feature): boolean => depth >= stock.thickness;

/** Lines engraved into a flat thing, mm deep. */
export interface Engraving {
  readonly paths: readonly (readonly Segment[])[];
  readonly depth: number;
}

/** A flat thing as drawn: its outlines, cut through, its round holes, and what is engraved into it. */
export interface FlatThing {
  readonly name: string;
  readonly title: string;
  readonly outlines: readonly Outline[];
  readonly circles: readonly Circle[];
  readonly thickness: number;
  readonly engraving?: Engraving | undefined;
  readonly plates?: number;
}

/** A flat thing in its stock, its longer side along x, zero at the stock's lower left corner. */
export function flatSetUp(thing: FlatThing, margin: number): RouterSetUp {
  const { name, title, outlines, thickness } = thing;
  const size = boundsOf(outlines.flatMap((outline) => tessellate(outline)));
  const isTall = size.max.y - size.min.y > size.max.x - size.min.x;
  const turned = outlines.map((outline) => transformOutline(outline, isTall ? { turn: 90 } : {}));
  const { min, max } = boundsOf(turned.flatMap((outline) => tessellate(outline)));
  const place: Transform2 = { ...(isTall && { turn: 90 }), shift: point(margin - min.x, margin - min.y) };
  return {
    name,
    title,
    stock: { width: max.x - min.x + 2 * margin, depth: max.y - min.y + 2 * margin, thickness },
    corner: { x: 0, y: 0 },
    holding: "tabs",
    height: thickness,
    features: flatFeatures(thing, place),
    ...(thing.plates && { plates: thing.plates }),
  };
}

/** What is cut for a flat thing that lies at a place of its stock: holes and what is engraved, openings, then round the part. */
export function flatFeatures(
  { outlines, circles, thickness, engraving }: Omit<FlatThing, "name" | "title">,
  place: Transform2,
): Feature[] {
  const placed = outlines.map((outline) => transformOutline(counterClockwise(outline), place));
  return [
    ...circles.map((circle): Feature => ({ kind: "hole", circle: transformCircle(circle, place), depth: thickness })),
    ...(engraving && engraving.paths.length > 0 ? [engravingFeature(engraving, place)] : []),
    ...placed.map(
      (outline): Feature => ({ kind: isWithin(outline, placed) ? "pocket" : "outer", outline, depth: thickness }),
    ),
  ];
}

const engravingFeature = ({ paths, depth }: Engraving, place: Transform2): Feature => ({
  kind: "engraving",
  paths: paths.map((path) => path.map((segment) => transformSegment(segment, place))),
  depth,
});

const counterClockwise = (outline: Outline): Outline => (outlineArea(outline) > 0 ? outline : reverseOutline(outline));

/** Whether an outline lies within an odd number of others: then it is an opening. */
function isWithin(outline: Outline, all: readonly Outline[]): boolean {
  const p = outline[0]!.from;
  return all.filter((other) => other !== outline && polygonHolds(tessellate(other), p)).length % 2 === 1;
}
