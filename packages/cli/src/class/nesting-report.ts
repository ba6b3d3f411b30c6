// The shop's sheets with the class's parts and jigs on them, as text for a terminal and as data.
import { type ClassNesting, nestClass, nestingLines, notNestedRows } from "@lamplane/export/nested";
import type { Design } from "@lamplane/parameters/table";

export interface NestingReport {
  readonly nesting: ClassNesting;
  /** What lies on no sheet, with its reason below it. */
  readonly lines: readonly string[];
  readonly data: {
    readonly sheets: readonly { readonly name: string; readonly parts: readonly string[] }[];
    readonly noPlace: readonly { readonly parts: string; readonly text: string }[];
  };
  /** Whether something would lie on a sheet if there were more of them, or larger ones. */
  readonly lacksRoom: boolean;
}

/** Undefined where the shop has no sheets for anything of the class. */
export function nestingReport(designs: readonly Design[], numbers: readonly number[]): NestingReport | undefined {
  const nesting = nestClass(designs, numbers);
  if (!nesting) return undefined;
  const { sheets, noPlace } = nesting.planned;
  const rows = notNestedRows(nesting.planned, nesting.design);
  return {
    nesting,
    lines: nestingLines(nesting),
    data: {
      sheets: sheets.map(({ sheet: { piece, items } }) => ({
        name: piece.name,
        parts: items.map(({ item }) => item.name),
      })),
      noPlace: rows.map(([parts, text]) => ({ parts, text })),
    },
    lacksRoom: noPlace.some(({ code }) => code === "room" || code === "size"),
  };
}
