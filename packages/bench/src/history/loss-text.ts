// What a measured value that is off plan costs, in words, for page and command alike.
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { LOSS } from "../words/history.ts";
import type { Loss } from "./losses.ts";

/** What was measured and what was planned, as a sentence; and each cost without a full stop. */
export function lossText(
  design: Design,
  { unit, asked, got, costs }: Loss,
): { came: string; costs: readonly string[] } {
  const format = (value: number, of: string) => formatValue(value, of, design);
  const came = LOSS.outcome({ planned: format(asked, unit), measured: format(got, unit) });
  return {
    came: costs.length === 0 ? `${came} ${LOSS.noEffect}` : came,
    costs: costs.map(({ name, now, planned, unit: of }) =>
      LOSS.cost({ name, now: format(now, of), planned: format(planned, of) }),
    ),
  };
}
