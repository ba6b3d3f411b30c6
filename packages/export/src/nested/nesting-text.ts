// What lies on a class's sheets, in a few lines.
import { NESTED } from "../words/nested.ts";
import type { ClassNesting } from "./class-nesting.ts";
import { notNestedRows } from "./not-nested.ts";

/** What lies on no sheet, or has no program there, comes with its reason below it. */
export const nestingLines = ({ planned, design }: ClassNesting): string[] => [
  NESTED.laidOut({ sheets: planned.sheets.length, left: planned.noPlace.length }),
  ...notNestedRows(planned, design).flatMap(([what, why]) => [`  ${what}`, `      ${why}`]),
];
