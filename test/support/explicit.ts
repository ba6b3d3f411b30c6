// A design with nothing left to `auto`, and every length in it made larger alike.
import { rowAt, valueAt, withValue } from "@lamplane/parameters/design";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { type Design, type NumberRow, rowsOf, TABLE } from "@lamplane/parameters/table";

/** Paths of the table's numbers. */
export const NUMBERS: readonly { readonly path: string; readonly row: NumberRow }[] = rowsOf(TABLE).flatMap(
  ({ path, row }) => (row.kind === "number" ? [{ path, row }] : []),
);

/** The design whose `auto` values are what they have come out as. */
export function makeExplicit(design: Design): Design {
  const { ramp, frame, pin, pinSize, top, recess, wedgeLength } = elevation(design);
  const solved: Record<string, number | string | undefined> = {
    "ramp.shape": ramp.shape,
    "ramp.angle": ramp.shape === "straight" ? ramp.angle : 60,
    "ramp.radius": ramp.curve?.radius ?? 100,
    "mouth.fromToe": frame.mouthX,
    "body.crown": top.crownX,
    "body.toeHeight": top.toeHeight,
    "body.heelHeight": top.heelHeight,
    "pin.diameter": pinSize.diameter,
    "pin.tenon": pinSize.tenon,
    "pin.height": pin.centre.y,
    "pin.tenonLength": design.body.cheek,
    "wedge.length": wedgeLength,
    "recess.width": recess?.width ?? 10,
    "recess.depth": recess?.depth ?? 5,
  };
  return Object.entries(solved).reduce(
    (made, [path, value]) => (valueAt(made, path) === "auto" ? withValue(made, path, value) : made),
    design,
  );
}

/** The same plane `times` as large: every length that is set, angles and shares as they are. */
export const enlargeDesign = (design: Design, times: number): Design =>
  NUMBERS.filter(({ row }) => row.quantity === "length").reduce((made, { path }) => {
    const value = valueAt(made, path);
    return typeof value === "number" ? withValue(made, path, value * times) : made;
  }, design);

/** The plane with one number of its design moved. */
export const planeWithValueMoved = (design: Design, path: string, by: number): Elevation | undefined => {
  const value = valueAt(design, path);
  const row = rowAt(path);
  if (typeof value !== "number" || row.kind !== "number") return undefined;
  return elevation(withValue(design, path, value + by));
};
