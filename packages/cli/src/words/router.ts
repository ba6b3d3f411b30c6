// What the reports say of the router.
import { countText, sentence } from "@lamplane/parameters/words";

export const ROUTER = {
  cutsAll: sentence(
    ({ programs }: { programs: number }) => `Router: ${countText(programs, "program")}; every part is cut.`,
    {
      programs: 12,
    },
  ),
  notCut: sentence(
    ({ programs, count }: { programs: number; count: number }) =>
      `Router: ${countText(programs, "program")}; ${count} not cut:`,
    { programs: 9, count: 2 },
  ),
} as const;
