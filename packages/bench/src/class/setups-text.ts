// The numbers that a class shares, a line each.
import type { Design } from "@lamplane/parameters/table";
import { formatAngle, formatLength } from "@lamplane/parameters/units";
import { SHARED_WORDS } from "../words/class.ts";
import type { ClassSetups, SharedGroup, SharedKey } from "./shared-setups.ts";

/**
 * @param design in whose unit lengths are written
 * @param numbers of the designs in the roster
 */
export function setupLines({ shared }: ClassSetups, design: Design, numbers: readonly number[]): string[] {
  const { coreWidth, ...solved } = shared;
  const planesOf = ({ planes }: SharedGroup) => planes.map(({ plane }) => numbers[plane]!);
  const widths =
    coreWidth.length === 0
      ? [SHARED_WORDS.noWidths]
      : [
          SHARED_WORDS.widths({ count: coreWidth.length }),
          ...coreWidth.map((group) =>
            SHARED_WORDS.width({ value: formatLength(group.value, design), planes: planesOf(group) }),
          ),
        ];
  const others = (Object.keys(solved) as (keyof typeof solved)[]).flatMap((key) =>
    solved[key].map((group) =>
      SHARED_WORDS.shared({
        name: SHARED_WORDS.names[key],
        value: valueText(key, group.value, design),
        planes: planesOf(group),
      }),
    ),
  );
  return [...widths, ...others];
}

const valueText = (key: SharedKey, value: number, design: Design): string =>
  key === "rampAngle" ? formatAngle(value) : formatLength(value, design);
