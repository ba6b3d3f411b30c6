// Words of the plots, and of what is said beside them.
import { sentence } from "@lamplane/parameters/words";

export const MOUTH_PLOT = {
  title: sentence(({ name }: { name: string }) => `${name}: how the mouth opens as the sole is trued`, {
    name: "first-smoother",
  }),
  off: "wood taken off the sole since glue-up",
  opening: "mouth opening, the edge set to the sole",
  after: sentence(
    ({ opening, off }: { opening: string; off: string }) => `mouth: ${opening} after ${off} of later truings`,
    { opening: "1.66 mm", off: "1 mm" },
  ),
  wanted: sentence(({ opening }: { opening: string }) => `wanted: ${opening}`, { opening: "0.15 mm" }),
  firstTruing: "first truing",
  truedSole: sentence(({ off }: { off: string }) => `trued sole, ${off} off: the mouth wanted`, { off: "3 mm" }),
  opens: sentence(({ off }: { off: string }) => `the edge comes through, ${off} off`, { off: "2.9 mm" }),
  wearEnds: "the wear ends: from here the mouth opens faster",
} as const;

export const THROAT_PLOT = {
  title: sentence(({ name }: { name: string }) => `${name}: width of the throat`, { name: "first-smoother" }),
  path: "path up the ramp from the mouth",
  width: "width from the ramp to what lies nearest",
  atTop: sentence(({ width }: { width: string }) => `width: ${width} at the top`, { width: "41.8 mm" }),
  narrows: sentence(
    ({ by, width, nearest }: { by: string; width: string; nearest: string }) =>
      `narrows here by ${by}, to ${width} at the ${nearest}`,
    { by: "1.2 mm", width: "9.1 mm", nearest: "pin" },
  ),
  mouth: sentence(({ opening }: { opening: string }) => `mouth: ${opening}`, { opening: "0.15 mm" }),
} as const;

export const SEASONS_PLOT = {
  sideGap: "side play of the iron",
  wedgeGap: "side play of the wedge",
  pinEndGap: "gap at each shoulder of the pin",
  leastWanted: sentence(({ gap }: { gap: string }) => `least wanted: ${gap}`, { gap: "0.1 mm" }),
  least: sentence(({ what, gap }: { what: string; gap: string }) => `${what}: least ${gap}`, {
    what: "side play of the iron",
    gap: "1.02 mm",
  }),
  unknown: "no movement figures for these woods",
  title: sentence(
    ({ of, note }: { of?: string | undefined; note?: string | undefined }) =>
      `${of === undefined ? "" : `${of}: `}gaps over the year${note ? ` (${note})` : ""}`,
    { of: "first-smoother" },
    { note: "no movement figures for these woods" },
  ),
  humidity: "relative humidity",
  moisture: "moisture of the wood",
  gap: "gap (at 0 the parts bind)",
  asCut: "as cut",
  bedTitle: sentence(({ name }: { name: string }) => `${name}: bed angle over the year`, { name: "first-smoother" }),
  mouthTitle: sentence(({ name }: { name: string }) => `${name}: mouth over the year, the edge set anew to the sole`, {
    name: "first-smoother",
  }),
  bed: sentence(({ angle }: { angle: string }) => `bed: ${angle}`, { angle: "47.18°" }),
  mouth: sentence(({ opening }: { opening: string }) => `mouth: ${opening}`, { opening: "0.164 mm" }),
  bedAngle: "bed angle",
  opening: "mouth opening",
  planned: sentence(({ value }: { value: string }) => `as cut, ${value}`, { value: "bed: 47°" }),
} as const;

export const SHARES = {
  underOne: "under 1 %",
  stopped: sentence(({ codes }: { codes: string }) => `stopped by ${codes}`, { codes: "pin-bending" }),
} as const;

export const APPENDIX_PLOTS = {
  mouth: "What each truing of the sole costs the mouth.",
  throat: "Whether a shaving finds its way out: width of the throat from the mouth to the top.",
  gaps: "What dry and damp days do to the gaps over the year (indicative).",
  bed: "What dry and damp days do to the bed angle (indicative).",
  mouthYear: "What dry and damp days do to the mouth (indicative).",
  shares: sentence(
    ({ assumption }: { assumption: string }) =>
      `Which step decides how wide the mouth comes out before set, read and repeat.${assumption}`,
    { assumption: "" },
  ),
  sharesTitle: sentence(({ name }: { name: string }) => `${name}: which step decides the mouth`, {
    name: "first-smoother",
  }),
  sharesAxis: "share of the variance of the mouth",
} as const;
