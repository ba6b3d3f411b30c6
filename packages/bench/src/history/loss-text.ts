// What a measured value that came out otherwise has cost, in words: the page and the command tell the same.
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import type { Loss } from "./losses.ts";

/** What came out instead of what, as a sentence; and each cost without its full stop. */
export function lossText(
  design: Design,
  { unit, asked, got, costs }: Loss,
): { came: string; costs: readonly string[] } {
  const format = (value: number, of: string) => formatValue(value, of, design);
  const came = `${format(asked, unit)} was wanted, ${format(got, unit)} came out.`;
  return {
    came: costs.length === 0 ? `${came} It costs nothing that is felt.` : came,
    costs: costs.map(
      ({ help, now, planned, unit: of }) =>
        `${help.replace(/\.$/, "")}: ${format(now, of)} instead of ${format(planned, of)}`,
    ),
  };
}
