// What lies on a class's sheets, in a few lines.
import { NESTED } from "../words/nested.ts";
import type { ClassNesting } from "./class-nesting.ts";
import { noPlaceRows } from "./no-place-text.ts";

/** What lies on no sheet comes with its reason below it. */
export const nestingLines = ({ nested: { sheets, noPlace }, design }: ClassNesting): string[] => [
  NESTED.laidOut({ sheets: sheets.length, left: noPlace.length }),
  ...noPlaceRows(noPlace, design).flatMap(([what, why]) => [`  ${what}`, `      ${why}`]),
];
