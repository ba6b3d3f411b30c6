// A plane's router programs as data, and what keeps the rest of it from being cut: planned once for files, reports and the page.
import { memoizeByPlane } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { ROUTER_LIMIT } from "../words/router.ts";
import type { RouterLimit } from "./limit.ts";
import { planeSetUps } from "./plane-set-ups.ts";
import { type Program, planProgram } from "./program.ts";

export interface PlanePrograms {
  readonly programs: readonly Program[];
  readonly limits: readonly RouterLimit[];
}

/** Undefined without a router and cutters. */
export const planePrograms = memoizeByPlane((plane): PlanePrograms | undefined => {
  const { router, cutters } = plane.design;
  if (!hasRouter(plane.design)) return undefined;
  const planned = planeSetUps(plane).map((setUp) => planProgram(setUp, router, cutters));
  return {
    programs: planned.flatMap((each) => ("program" in each ? [each.program] : [])),
    limits: planned.flatMap((each) => ("limit" in each ? [each.limit] : [])),
  };
});

export const hasRouter = ({ router, cutters }: Design): boolean => cutters.length > 0 && router.area.width > 0;

/** Why a set-up is not cut, in the maker's unit. */
export function limitText({ code, value, limit }: RouterLimit, design: Design): string {
  const words = ROUTER_LIMIT[code];
  const text = (number: number) => formatValue(number, code === "speed" ? "rpm" : "mm", design);
  return typeof words === "string" ? words : words({ value: text(value), limit: text(limit) });
}
