// Words of the build as it goes: what came out otherwise and what that costs, a reading that looks like a slip, what to expect.
import { sentence } from "@lamplane/parameters/words";

interface Outcome {
  readonly planned: string;
  readonly measured: string;
}

export const LOSS = {
  outcome: sentence(({ planned, measured }: Outcome) => `${measured} measured, ${planned} planned.`, {
    planned: "49.6 mm",
    measured: "49.2 mm",
  }),
  noEffect: "No effect on how the plane works.",
  cost: sentence(
    ({ name, now, planned }: { name: string; now: string; planned: string }) => `${name} ${now}, not ${planned}`,
    { name: "iron side play", now: "1.2 mm", planned: "1.6 mm" },
  ),
} as const;

/** How a reading may have gone wrong. */
export const SLIPS = {
  "mm-as-inches": "entered in mm, read as inches",
  "inches-as-mm": "entered in inches, read as mm",
  "decimal-point": "decimal point one place off",
  "from-square": "measured from square, not from the sole",
  "from-finished-toe": "measured from the line of the finished toe, not from the toe end of the cheeks",
} as const;
export type SlipCode = keyof typeof SLIPS;

interface DoubtData {
  readonly reading: string;
  readonly expected: string;
  readonly meant?: string;
  readonly slip?: SlipCode;
}

export const DOUBT = sentence(
  ({ reading, expected, meant, slip }: DoubtData) =>
    `${reading} is far from the ${expected} expected. ${meant && slip ? `Did you mean ${meant} (${SLIPS[slip]})?` : "Is it a slip?"}`,
  { reading: "496 mm", expected: "49.6 mm", meant: "49.6 mm", slip: "decimal-point" },
  { reading: "41°", expected: "47°" },
);

/** From nothing to all of it. */
export const RANGE = sentence(({ min, max }: { min: string; max: string }) => `${min} to ${max}`, {
  min: "0",
  max: "3 mm",
});

/** What a reading should come to, where one number would mislead. */
export const EXPECTED = {
  mouthAtSole: sentence(
    ({ first, opening }: { first: string | undefined; opening: string }) =>
      `${first ?? "closed"} at first, ${opening} in the end`,
    { first: undefined, opening: "0.15 mm" },
    { first: "0.66 mm", opening: "0.8 mm" },
  ),
  soleWhereMouthOpens: sentence(
    ({ short }: { short: string }) => `${short} or more at first, 0 once the mouth is as wanted`,
    { short: "0.1 mm" },
  ),
} as const;
