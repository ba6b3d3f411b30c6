// What lies on no sheet or has no program there, and why, in words.
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { listText } from "@lamplane/parameters/words";
import { limitCode } from "../router/limit.ts";
import { limitText } from "../router/plane-programs.ts";
import { NO_PLACE, NO_PLACE_HELP, NO_PLACE_SOURCE } from "../words/nested.ts";
import type { NoPlace } from "./nested-sheets.ts";
import type { SheetPrograms } from "./sheet-programs.ts";

export interface NotNested {
  /** A part or jig, or the program of a sheet. */
  readonly what: string;
  /** As `explain` knows it. */
  readonly code: string;
  readonly text: string;
}

/** Sheets whose program cannot be made, then what lies on none. */
export function notNested({ sheets, noPlace }: SheetPrograms, design: Design): NotNested[] {
  return [
    ...sheets.flatMap(({ name, limit }) =>
      limit ? [{ what: `${name}.ngc`, code: limitCode(limit.code), text: limitText(limit, design) }] : [],
    ),
    ...noPlace.map((why) => ({ what: why.item.name, code: noPlaceCode(why), text: noPlaceText(why, design) })),
  ];
}

/** Everything with one reason in one row. */
export function notNestedRows(planned: SheetPrograms, design: Design): (readonly [what: string, why: string])[] {
  const byReason = new Map<string, string[]>();
  for (const { what, text } of notNested(planned, design)) byReason.set(text, [...(byReason.get(text) ?? []), what]);
  return [...byReason].map(([text, names]) => [listText(names), text] as const);
}

type PlaceCode = Exclude<NoPlace["code"], "router">;

/** What decides each, by dotted path. */
const PARAMETERS: Readonly<Record<PlaceCode, readonly string[]>> = {
  thickness: ["sheets.thickness", "sheets.measured", "boards.thickness"],
  sheet: ["sheets.thickness", "jigs.plate"],
  plate: ["sheets.thickness", "jigs.plate"],
  size: ["sheets.length", "sheets.width", "router.margin"],
  room: ["sheets.length", "sheets.width", "sheets.count", "router.web"],
};

const placeCode = (code: PlaceCode): string => (code === "sheet" ? "sheet-missing" : `sheet-${code}`);
const noPlaceCode = (why: NoPlace): string => (why.code === "router" ? limitCode(why.limit.code) : placeCode(why.code));

/** What each reason is, without a plane. */
export const sheetLimitDescriptions = () =>
  (Object.keys(PARAMETERS) as PlaceCode[]).map((code) => ({
    code: placeCode(code),
    help: NO_PLACE_HELP[code],
    parameters: PARAMETERS[code],
    source: NO_PLACE_SOURCE,
  }));

/** In the maker's unit. */
function noPlaceText(why: NoPlace, design: Design): string {
  const mm = (value: number) => formatValue(value, "mm", design);
  const size = ({ width, depth }: { width: number; depth: number }) => `${mm(width)} × ${mm(depth)}`;
  switch (why.code) {
    case "thickness":
      return NO_PLACE.thickness({ value: mm(why.value), nearest: mm(why.nearest) });
    case "sheet":
      return NO_PLACE.sheet({ thickness: mm(why.value) });
    case "plate":
      return NO_PLACE.plate({ least: mm(why.range.least), most: mm(why.range.most) });
    case "size":
      return NO_PLACE.size({ needs: size(why.needs), largest: size(why.largest) });
    case "room":
      return NO_PLACE.room({ needs: size(why.needs) });
    case "router":
      return limitText(why.limit, design);
  }
}
