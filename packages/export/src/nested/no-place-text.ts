// Why something lies on no sheet, in words.

import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { listText } from "@lamplane/parameters/words";
import { limitText } from "../router/plane-programs.ts";
import { NO_PLACE } from "../words/nested.ts";
import type { NoPlace } from "./nested-sheets.ts";

/** In the maker's unit. */
export function noPlaceText(why: NoPlace, design: Design): string {
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

/** What lies on no sheet, and why, a row for each reason. */
export function noPlaceRows(noPlace: readonly NoPlace[], design: Design): (readonly [what: string, why: string])[] {
  const byReason = new Map<string, string[]>();
  for (const each of noPlace) {
    const why = noPlaceText(each, design);
    byReason.set(why, [...(byReason.get(why) ?? []), each.item.name]);
  }
  return [...byReason].map(([why, names]) => [listText(names), why] as const);
}
