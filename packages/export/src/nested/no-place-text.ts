// Why something lies on no sheet, in words.
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
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
