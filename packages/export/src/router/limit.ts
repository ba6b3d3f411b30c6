// What keeps a router from cutting something, as data; the sentences are in words/.
import { ROUTER_LIMIT_HELP, ROUTER_LIMIT_SOURCE } from "../words/router.ts";

/** `crossing` of an outline with itself, `engraver` that is fine enough, `reach` of the cutters, `opening` for a cutter to turn in, `tab-run` of straight side for a bridge, `speed` of the spindle, `step` of a pass, `travel` of the machine. */
export type LimitCode =
  | "crossing"
  | "engraver"
  | "reach"
  | "no-end-mill"
  | "opening"
  | "tab-run"
  | "speed"
  | "step"
  | "travel-x"
  | "travel-y"
  | "travel-z";

/** A set-up that cannot be cut: the value and what it must be at least, or for crossing, travel, engraver, speed and step at most. mm, speed in rpm */
export interface RouterLimit {
  readonly setUp: string;
  readonly title: string;
  readonly code: LimitCode;
  readonly value: number;
  readonly limit: number;
}

/** What decides each limit, by dotted path. */
const PARAMETERS: Readonly<Record<LimitCode, readonly string[]>> = {
  crossing: ["core.cornerCutter"],
  engraver: ["router.engraving", "cutters.kind", "cutters.diameter"],
  reach: ["cutters.cutting", "router.through", "body.cheek", "core.layers"],
  "no-end-mill": ["cutters.kind"],
  opening: ["cutters.diameter", "cutters.cutting"],
  "tab-run": ["router.tabs.width", "cutters.diameter"],
  speed: ["cutters.speed", "router.maxSpeed"],
  step: ["cutters.step", "cutters.cutting"],
  "travel-x": ["router.area.width", "router.margin"],
  "travel-y": ["router.area.depth", "router.margin"],
  "travel-z": ["router.area.height", "router.parkHeight", "router.rapidHeight"],
};

/** A limit's name in reports: the router's among the checks of a plane. */
export const limitCode = (code: LimitCode): string => `router-${code}`;

/** What each limit is, without a plane. */
export const routerLimitDescriptions = () =>
  (Object.keys(PARAMETERS) as LimitCode[]).map((code) => ({
    code: limitCode(code),
    help: ROUTER_LIMIT_HELP[code],
    parameters: PARAMETERS[code],
    source: ROUTER_LIMIT_SOURCE,
  }));

/** Wood that a round cutter leaves in a corner: where, how far its arc stays off the corner, how far along the sides. mm */
export interface CornerLeft {
  readonly at: { readonly x: number; readonly y: number };
  readonly gap: number;
  readonly along: number;
}
