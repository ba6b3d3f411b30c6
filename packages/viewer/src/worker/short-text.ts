// A design file without comments that holds only what no default says: what fits a code to scan when the whole file does not.
import { readDesign, setValue, valueAt } from "@lamplane/parameters/design";
import { type Design, defaultIn, rowsOf, TABLE } from "@lamplane/parameters/table";

/** What every design must say. */
const IRON = ["iron.width", "iron.thickness"];

/** @param text the whole file, which is returned where the short one would be another design, or no shorter */
export function shortText(design: Design, text: string): string {
  const { units, iron } = design;
  const start = `units: ${units}\niron: { width: ${iron.width} mm, thickness: ${iron.thickness} mm }\n`;
  const short = rowsOf(TABLE).reduce((written, { path, row }) => {
    const value = valueAt(design, path);
    const isDefault = value === (row.kind === "number" ? defaultIn(row, units) : row.default);
    const isWritten = value === undefined || isDefault || path === "units" || IRON.includes(path);
    return isWritten ? written : setValue(written, path, value);
  }, start);
  const reading = readDesign(short, "");
  const isSame = reading.ok && JSON.stringify(reading.design) === JSON.stringify(design);
  return isSame && short.length < text.length ? short : text;
}
