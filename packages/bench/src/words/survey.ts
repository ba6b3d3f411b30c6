// Words of a bed's survey: verdict, figures, what is missing or doubtful, and where to work.
import { sentence } from "@lamplane/parameters/words";

const RUN = { by: "0.140 mm", where: "diagonal from left of tip" };

export const SURVEY = {
  missing: sentence(({ what }: { what: string }) => `Missing: ${what}.`, {
    what: "no reading shows the curve along the bed",
  }),
  humped: sentence(({ by, where }: typeof RUN) => `FAILS: humped ${by}, ${where}. Take the hump off as mapped.`, RUN),
  wound: sentence(
    ({ hump, humpAt, hollow, hollowAt }: { hump: string; humpAt: string; hollow: string; hollowAt: string }) =>
      `FAILS: in wind. Humped ${hump}, ${humpAt}; hollow ${hollow}, ${hollowAt}.`,
    {
      hump: "0.08 mm",
      humpAt: "diagonal from left of tip",
      hollow: "0.07 mm",
      hollowAt: "diagonal from right of tip",
    },
  ),
  undecided: sentence(({ why }: { why: string }) => `UNDECIDED: ${why}`, {
    why: "the readings do not cover the whole bed.",
  }),
  tooHollow: sentence(
    ({ by, where, allowed }: typeof RUN & { allowed: string }) =>
      `FAILS: hollow ${by}, ${where} (max ${allowed}). Take the rim down as mapped.`,
    { ...RUN, allowed: "0.1 mm" },
  ),
  hollow: sentence(
    ({ by, where, allowed, hump }: typeof RUN & { allowed: string; hump: string }) =>
      `PASSES: hollow ${by}, ${where} (max ${allowed}); ${hump}.`,
    { ...RUN, allowed: "0.1 mm", hump: "no hump" },
  ),
  flat: sentence(({ hump }: { hump: string }) => `PASSES: flat; ${hump}.`, { hump: "no hump over 0.036 mm" }),
  noHumpOver: sentence(({ hump }: { hump: string }) => `no hump over ${hump}`, { hump: "0.036 mm" }),
  noHump: "no hump",
  incomplete: "the readings do not cover the whole bed.",
  rough: "the readings do not lie on one smooth surface: a high spot, a slip, or a straightedge that moved.",
  maybeHollow: sentence(
    ({ hollow, allowed, mapped }: { hollow: string; allowed: string; mapped: boolean }) =>
      `the hollow may be ${hollow} (max ${allowed}). Read with thinner leaves${mapped ? ", or take the rim down as mapped" : ""}.`,
    { hollow: "0.120 mm", allowed: "0.1 mm", mapped: true },
  ),
  maybeHump: sentence(
    ({ hump, limit }: { hump: string; limit: string }) =>
      `a hump of ${hump} is possible (max ${limit}). Read more stations, or with thinner leaves.`,
    { hump: "0.08 mm", limit: "0.05 mm" },
  ),
  shape: "Over the whole bed, and within which range 19 times in 20 (hollow +, hump -):",
  readAgain: sentence(
    ({
      where,
      read,
      fitted,
      side,
      by,
    }: {
      where: string;
      read: string;
      fitted: string;
      side: "high" | "low";
      by: string;
    }) =>
      `Check the ${where}: ${read} read, ${fitted} fits the other readings. If it is right, the wood is ${by} too ${side} there.`,
    {
      where: "gap at 20 mm up, 5 mm across (line 14)",
      read: "0.2 to 0.3 mm",
      fitted: "0.02 mm",
      side: "low",
      by: "0.18 mm",
    },
  ),
  doubtfulPlace: sentence(
    ({ kind, place, line }: { kind: string; place: string; line: number }) => `${kind} at ${place} (line ${line})`,
    { kind: "gap", place: "20 mm up, 5 mm across", line: 14 },
  ),
  place: sentence(({ along, across }: { along: string; across: string }) => `${along} up, ${across} across`, {
    along: "20 mm",
    across: "5 mm",
  }),
  diagonal: sentence(({ side }: { side: "left" | "right" }) => `diagonal from ${side} of tip`, { side: "left" }),
  oblique: sentence(({ from, to }: { from: string; to: string }) => `line from ${from} to ${to}`, {
    from: "0 mm up, 10 mm across",
    to: "80 mm up, 40 mm across",
  }),
  fit: sentence(
    ({ count, check, range }: { count: number; check: string; range: string }) =>
      `${count} readings, ${check}. Ranges follow from ${range}.`,
    { count: 40, check: "21 of them to check the others: misfit 22.4 (max 39.0)", range: "the error of the readings" },
  ),
  noSpare: "just enough: none checks the others",
  spare: sentence(
    ({ spare, misfit, limit }: { spare: number; misfit: string; limit: string }) =>
      `${spare} of them to check the others: misfit ${misfit} (max ${limit})`,
    { spare: 21, misfit: "22.4", limit: "39.0" },
  ),
  ownError: "the error of the readings",
  scatter: "the scatter of the readings, which is larger than their error",
  map: sentence(
    ({ unit }: { unit: "mm" | "in" }) =>
      `Take off, in ${unit === "mm" ? "hundredths of a millimetre" : "thousandths of an inch"}, as you look from the heel to the toe:`,
    { unit: "mm" },
    { unit: "in" },
  ),
  tip: "tip",
  top: "top",
  left: "left",
  right: "right",
} as const;

/** Curvature that no reading shows, and what to read for it. */
export const MISSING_CURVATURE = {
  along: "no reading shows the curve along the bed: read three stations or more on a line from tip to top",
  across: "no reading shows the curve across the bed: read three stations or more on a line from left to right",
  wind: "no reading shows the wind of the bed: read three stations or more on each diagonal",
} as const;

/** Where the rules of the verdict and the figures come from. */
export const SURVEY_SOURCES: readonly string[] = [
  "Flat or slightly hollow passes, any hump fails: common practice, no published source.",
  "Surface: least squares through the middle of each interval; over a hollow a straightedge rests at both ends, gap 0.",
  "Feelers: the 95 % range holds every surface within all readings, 1.25 × hand.feel allowed (linear programming).",
  "Heights: 95 % range, normal where the readings' own error explains their scatter, else Student's t; all directions: Scheffé.",
  "Left is your left as you stand behind the heel and look to the toe.",
];
