// The flat parts and jigs of a whole class on the shop's sheets: every plane's parts, each jig once for the planes that it serves.
import { asBuiltPlane, lockedParameters } from "@lamplane/bench";
import { sharedJigs } from "@lamplane/bench/class";
import type { Design } from "@lamplane/parameters/table";
import { type FlatItem, flatJigs, flatParts } from "./flat-items.ts";
import { nestItems } from "./nested-sheets.ts";
import { planSheets, type SheetPrograms } from "./sheet-programs.ts";

export interface ClassNesting {
  /** The first of the class, whose shop and unit are all the others' too. */
  readonly design: Design;
  readonly planned: SheetPrograms;
}

/**
 * Undefined where the shop has no sheets for anything of the class. Cheeks and cores that are milled take up no room any more.
 * @param designs with the shared numbers in them
 * @param numbers of the designs in the roster, which their parts are named by
 */
export function nestClass(designs: readonly Design[], numbers: readonly number[]): ClassNesting | undefined {
  const [design] = designs;
  if (!design || design.sheets.length === 0) return undefined;
  const numbered = (plane: number) => (item: FlatItem) => ({ ...item, name: `${numbers[plane]} ${item.name}` });
  const parts = designs.flatMap((each, plane) =>
    lockedParameters(each).has("body.cheek") ? [] : flatParts(asBuiltPlane(each)).map(numbered(plane)),
  );
  const jigs = () =>
    sharedJigs(designs).flatMap(({ name, planes }) => {
      const [first] = planes;
      return flatJigs(asBuiltPlane(designs[first!]!))
        .filter(({ jig }) => jig === name)
        .map(numbered(first!));
    });
  const nested = nestItems(parts, jigs, design);
  return nested && { design, planned: planSheets(nested, design) };
}
