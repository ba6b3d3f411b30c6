// The unit is another: a design that nothing was done to begins anew with round sizes in it; any other keeps its sizes.
import type { DesignOrigin } from "./address.ts";
import { EXAMPLES } from "./examples.ts";
import type { SheetState } from "./store.ts";

const FIRST = Object.keys(EXAMPLES)[0]!;
/** A design in inches, all but the iron left to its defaults. */
const INCH_TEXT = "units: in\niron: { width: 1 3/4 in, thickness: 1/8 in }\n";
const INCH_DESIGN: DesignOrigin = { kind: "text", name: "plane.yaml", text: INCH_TEXT };

/** Where a design in the other unit begins; undefined where the one that is shown stays, with its unit changed. */
export function originInUnits({ origin, changes }: SheetState, units: "mm" | "in"): DesignOrigin | undefined {
  if (changes.size > 0) return undefined;
  if (units === "in" && origin.kind === "example" && origin.name === FIRST) return INCH_DESIGN;
  if (units === "mm" && origin.kind === "text" && origin.text === INCH_TEXT) return { kind: "example", name: FIRST };
  return undefined;
}
