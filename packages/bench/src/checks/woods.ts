// Notes on what is not judged for want of data: a wood the tables do not hold, a property they lack, a moisture out of range.

import type { Elevation } from "@lamplane/parameters/elevation";
import { CONSTANT_FROM, CONSTANT_TO, type Species } from "@lamplane/parameters/wood";
import { missingProperties, type NamedWood, planeWoods, WOOD_ROLES } from "../plane-woods.ts";
import { planeSeasons } from "../seasons/plane-seasons.ts";
import type { Judgement } from "./judgement.ts";

const TABLES = "Wood Handbook (FPL-GTR-190, 2010), tables 4-3, 4-4, 5-3, 5-5 and 13-5";
const EQUATION = "Wood Handbook (FPL-GTR-190, 2010), eq. 13-2, published for 6 to 14 %";

const PLACE = { body: "bedTop", pin: "pinCentre", wedge: "wedgeTip" } as const;

/** Woods that the tables do not hold, or hold only in part: one note for each wood, for all parts made of it. */
export function noteWoods(plane: Elevation): Judgement[] {
  const woods = planeWoods(plane);
  return WOOD_ROLES.map((role) => woods[role])
    .filter(({ sameAsBody }) => !sameAsBody)
    .flatMap((wood) => {
      const { found } = wood.lookUp;
      const parts = WOOD_ROLES.filter((role) => role === wood.role || (wood.role === "body" && woods[role].sameAsBody));
      return found
        ? [...noteTradeName(wood, found, parts), ...noteIncompleteWood(wood, found, parts)]
        : [noteUnknownWood(wood, parts)];
    });
}

/** What each note is, without a plane. */
const WOODS = { parameters: WOOD_ROLES.map((role) => `wood.${role}`), source: TABLES } as const;
const UNKNOWN = { code: "wood-name", ...WOODS } as const;
const TRADE_NAME = { code: "wood-trade-name", ...WOODS } as const;
const INCOMPLETE = { code: "wood-properties", ...WOODS } as const;
export const WOOD_NOTES = [UNKNOWN, TRADE_NAME, INCOMPLETE] as const;
export const MOISTURE_NOTE = {
  code: "moisture-range",
  parameters: ["wood.driest.humidity", "wood.dampest.humidity", "wood.moisture"],
  source: EQUATION,
} as const;

type Parts = readonly NamedWood["role"][];

const noteOn = (role: NamedWood["role"]) =>
  ({
    severity: "note",
    unit: "",
    parameters: [`wood.${role}`],
    place: PLACE[role],
    remedies: [],
  }) as const;

const noteUnknownWood = ({ role, name, lookUp }: NamedWood, parts: Parts): Judgement => ({
  ...UNKNOWN,
  ...noteOn(role),
  subject: "wood-in-tables",
  value: 0,
  limit: 1,
  data: { wood: name, nearest: lookUp.found ? [] : lookUp.nearest, parts },
});

/** A name of the trade, and the row of the tables that it is taken for. */
const noteTradeName = ({ role, name, lookUp }: NamedWood, found: Species, parts: Parts): Judgement[] =>
  lookUp.found && lookUp.isTradeName
    ? [
        {
          ...TRADE_NAME,
          ...noteOn(role),
          subject: "wood-by-trade-name",
          value: 1,
          limit: 1,
          data: { wood: name, nearest: [found.name], parts },
        },
      ]
    : [];

function noteIncompleteWood({ role }: NamedWood, found: Species, parts: Parts): Judgement[] {
  const missing = [...new Set(parts.flatMap((part) => missingProperties(found, part)))];
  if (missing.length === 0) return [];
  return [
    {
      ...INCOMPLETE,
      ...noteOn(role),
      subject: "wood-properties",
      value: missing.length,
      limit: 0,
      data: { wood: found.name, missing, parts },
    },
  ];
}

/**
 * A moisture beyond 6 … 14 % with a wood of which the tables give no shrinkage, only the change per percent within them.
 * Nothing that the parameters allow brings wood over 30 %, where the other equation ends.
 */
export function noteMoisture(plane: Elevation): Judgement[] {
  const { valid, driest, planned, dampest } = planeSeasons(plane);
  if (valid) return [];
  const moistures = [driest.moisture, planned.moisture, dampest.moisture];
  const [least, most] = [Math.min(...moistures), Math.max(...moistures)];
  const damp = most > CONSTANT_TO;
  return [
    {
      ...MOISTURE_NOTE,
      subject: "moisture-of-year",
      severity: "note",
      relation: damp ? "at most" : "at least",
      value: damp ? most : least,
      limit: damp ? CONSTANT_TO : CONSTANT_FROM,
      unit: "%",
      place: "edge",
      remedies: [],
    },
  ];
}
