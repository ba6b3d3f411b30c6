// What each `auto` has come out as, by the parameter's path: the page, remedies and the tolerances' plan read it here.
import { lengthsText, valueAt } from "@lamplane/parameters/design";
import {
  type Elevation,
  ironTaper,
  layersOf,
  layerThickness,
  pinLengths,
  thicknessAt,
  topFromEdge,
} from "@lamplane/parameters/elevation";
import { plateThicknesses, printedRoom, reliefOfCutters } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import { planeSeasons } from "./seasons/plane-seasons.ts";

/** mm, degrees or percent; undefined where this plane makes no use of the parameter: a curved ramp stands at its wear's angle. */
const AUTO_VALUES = {
  "iron.taper": ({ design }) => ironTaper(design),
  "iron.thicknessAtTop": ({ design }) => thicknessAt(design, topFromEdge(design)),
  "iron.topFromEdge": ({ design }) => topFromEdge(design),
  "body.crown": (e) => e.top.crownX,
  "body.toeHeight": (e) => e.top.toeHeight,
  "body.heelHeight": (e) => e.top.heelHeight,
  "ramp.angle": (e) => (e.ramp.shape === "straight" ? e.ramp.angle : undefined),
  "ramp.shape": (e) => e.ramp.shape,
  "ramp.radius": (e) => e.ramp.curve?.radius,
  "mouth.fromToe": (e) => e.frame.mouthX,
  "core.layers": (e) => {
    const layers = layersOf(e);
    return layers && lengthsText(layers.map(layerThickness));
  },
  "recess.width": (e) => e.recess?.width,
  "recess.depth": (e) => e.recess?.depth,
  "wedge.length": (e) => e.wedgeLength,
  "pin.diameter": (e) => e.pinSize.diameter,
  "pin.tenon": (e) => e.pinSize.tenon,
  "pin.height": (e) => e.pin.centre.y,
  "pin.tenonLength": (e) => pinLengths(e).end - pinLengths(e).shoulder,
  "jigs.holeClearance": ({ design }) => printedRoom(design).holes,
  "jigs.plate": ({ design }) => {
    const plates = plateThicknesses(design);
    return plates && lengthsText(plates);
  },
  "jigs.relief": ({ design }) => reliefOfCutters(design),
  "wood.wedgeRings": ({ design }) => design.wood.rings,
  "wood.moisture": (e) => planeSeasons(e).planned.moisture,
} as const satisfies Record<string, (plane: Elevation) => number | string | undefined>;

export type AutoPath = keyof typeof AUTO_VALUES;

/** Every parameter that may be `auto`. */
export const AUTO_PATHS = Object.keys(AUTO_VALUES) as readonly AutoPath[];

/** What a parameter would be, were it `auto`; undefined where it cannot be, or the plane makes no use of it. */
export const autoValue = (plane: Elevation, path: string): number | string | undefined =>
  Object.hasOwn(AUTO_VALUES, path) ? AUTO_VALUES[path as AutoPath](plane) : undefined;

/** Every number that a design leaves to `auto`, as it came out; what the plane makes no use of is left out. */
export function solvedValues(design: Design, plane: Elevation): Record<string, number> {
  const open = AUTO_PATHS.filter((path) => valueAt(design, path) === "auto");
  return Object.fromEntries(
    open.flatMap((path) => {
      const value = autoValue(plane, path);
      return typeof value === "number" ? [[path, value]] : [];
    }),
  );
}
