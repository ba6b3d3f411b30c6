// Words of a mouth's reading: what to take off, what closes one that is too wide, what later truing costs.
import type { Units } from "@lamplane/parameters/units";
import { sentence, UNIT_NAMES } from "@lamplane/parameters/words";

const PATCH = { thick: "4 mm", long: "22.8 mm", wide: "49.6 mm", angle: "55.4°" };

export const MOUTH = {
  seen: sentence(
    ({ seen, wanted, growth }: { seen: string; wanted: string; growth: string }) =>
      `Mouth ${seen}, wanted ${wanted}; it opens ${growth} off the sole.`,
    { seen: "0.05 mm", wanted: "0.15 mm", growth: "1.51 mm for each mm" },
  ),
  growth: sentence(
    ({ growth, units }: { growth: string; units: "mm" | "in" }) =>
      units === "mm" ? `${growth} mm for each mm` : `${growth} thousandths for each thousandth`,
    { growth: "1.51", units: "mm" },
    { growth: "1.51", units: "in" },
  ),
  leave: "LEAVE IT: the mouth is as wanted.",
  leaveWide: sentence(
    ({ by }: { by: string }) => `LEAVE IT: ${by} too wide, less than one shaving makes. No planing closes it.`,
    {
      by: "0.02 mm",
    },
  ),
  takeOff: sentence(
    ({ amount, atLeast, shavings }: { amount: string; atLeast: boolean; shavings: string }) =>
      `TAKE OFF ${atLeast ? "at least " : ""}${amount} of the sole${shavings}.`,
    { amount: "0.07 mm", atLeast: false, shavings: ": 1 shaving of 0.05 mm, each opens the mouth 0.08 mm" },
  ),
  lessThanShaving: sentence(({ size }: { size: string }) => `, less than one shaving of ${size}`, { size: "0.05 mm" }),
  shavings: sentence(
    ({ count, size, opens }: { count: number; size: string; opens: string }) =>
      `: ${count} ${count === 1 ? "shaving" : "shavings"} of ${size}, each opens the mouth ${opens}`,
    { count: 3, size: "0.05 mm", opens: "0.08 mm" },
  ),
  shut: "No light shows, so this is only the least it needs. Take it off, then read again.",
  stopShort: "Stop short, set the edge to the new sole, and read the mouth again.",
  tension: "Plane with iron and wedge at working tension, the edge drawn back above the sole.",
  tooWide: sentence(
    ({ by }: { by: string }) =>
      `TOO WIDE by ${by}: planing only opens it further. Leave it, pack the iron, or patch the sole.`,
    { by: "0.45 mm" },
  ),
  packing: sentence(
    ({ thickness, effect }: { thickness: string; effect: string }) =>
      `Packing: ${thickness} of card or veneer on the bed, even, under the whole iron${effect}.`,
    { thickness: "0.33 mm", effect: ". No wood is lost; the wedge stands 3.1 mm further out" },
  ),
  packingHump: ". But then the cap iron hump does not pass under the cross pin",
  packingIron: ". But then the iron does not pass under the cross pin",
  packingWedge: sentence(
    ({ thickness }: { thickness: string }) =>
      `. But then the wedge does not reach under the cross pin: make a wedge ${thickness} thinner`,
    { thickness: "0.33 mm" },
  ),
  packingFits: sentence(({ out }: { out: string }) => `. No wood is lost; the wedge stands ${out} further out`, {
    out: "3.1 mm",
  }),
  readBothCheeks: sentence(
    ({ uneven }: { uneven: string }) =>
      `Read it beside both cheeks, edge even with the sole. At first one side may be ${uneven} wider; even it out as you open the mouth, by wood off the ramp at the narrow side.`,
    { uneven: "0.14 mm" },
  ),
  even: sentence(({ opening }: { opening: string }) => `Mouth alike at both cheeks: ${opening}.`, {
    opening: "0.15 mm",
  }),
  uneven: sentence(
    ({ left, right, by, middle }: { left: string; right: string; by: string; middle: string }) =>
      `Uneven by ${by}: when the mouth is ${middle} in the middle, it is ${left} at the left cheek and ${right} at the right. Truing the sole does not change that.`,
    { left: "0.10 mm", right: "0.20 mm", by: "0.10 mm", middle: "0.15 mm" },
  ),
  planeRamp: sentence(
    ({ narrow }: { narrow: string }) =>
      `With the edge even with the sole, plane that much off the foot of the ramp at the ${narrow} cheek, running out to nothing at the other. It opens the mouth: do it before more comes off the sole, and read again.`,
    { narrow: "left" },
  ),
  tilt: sentence(
    ({ lean, room }: { lean: string; room: string }) =>
      `If the bed is out of square, the iron leans ${lean} to one side at the top of the bed to cut even; ${room} of side play is left.`,
    { lean: "0.10 mm", room: "1.40 mm" },
  ),
  tiltStopped: sentence(
    ({ short }: { short: string }) =>
      `If the bed is out of square, the cheeks stop the iron ${short} before it cuts even. True the bed square first.`,
    { short: "0.20 mm" },
  ),
  patch: sentence(
    ({ thick, long, wide, angle }: typeof PATCH) =>
      `Patch: a slip let into the sole ahead of the mouth, at least ${thick} thick and ${long} long, ${wide} wide, grain along the plane. Cut its mouth end at ${angle} to the sole, in line with the ramp.`,
    PATCH,
  ),
  patchLife: sentence(
    ({ growth, before, thick }: { growth: string; before: string; thick: string }) =>
      `With the patch the mouth opens ${growth} off, not ${before}. The patch is gone after ${thick}.`,
    { growth: "1.622 mm for each mm", before: "1.51", thick: "4 mm" },
  ),
  patchTooLong: "The front block is too short for a patch. Face its whole sole instead.",
  patchCaution:
    "Take the iron out first. Keep hands clear of chisel and router; follow the machine's manual and trained practice.",
  life: sentence(
    ({ units }: { units: Units }) => `Later truings, edge set to the new sole each time, in ${UNIT_NAMES[units]}:`,
    { units: "mm" },
  ),
  lifeEnd: sentence(
    ({ depth, times }: { depth: string; times: number }) =>
      `The table ends ${depth} off, or sooner where the mouth is ${times} times the one wanted.`,
    { depth: "3 mm", times: 10 },
  ),
} as const;

/** Heads of the life's table. */
export const LIFE_HEADS = {
  takenOff: "off",
  opening: "mouth",
  edgeFromToe: "edge from toe",
  bedBelowHeel: "bed below heel",
  bedToRecess: "bed to recess",
  wedgeTipFromEdge: "edge to wedge",
  wearLeft: "wear left",
  pinHeight: "pin height",
  height: "height",
} as const;

/** Where the rules and figures of a mouth's reading come from. */
export const MOUTH_SOURCES: readonly string[] = [
  "Wood to take off: plane geometry, (wanted − read) / (cot bed + cot ramp); by the curve of a curved ramp.",
  "Packing: plane geometry, excess width · sin bed. Patch: plane geometry; length of joint and least thickness are estimates.",
  "Stop short, set the iron, read again: common practice, no published source.",
];
