// Notes on what is not judged for want of data: a wood the tables do not hold, a property they lack, a moisture out of range.

import type { Elevation } from "@lamplane/parameters/elevation";
import type { Species } from "@lamplane/parameters/wood";
import { CONSTANT_FROM, CONSTANT_TO } from "@lamplane/parameters/wood";
import { missingProperties, type NamedWood, planeWoods, WOOD_ROLES } from "../plane-woods.ts";
import { planeSeasons } from "../seasons/plane-seasons.ts";
import { formatJudgedValue, type Judgement, makeNote } from "./judgement.ts";

const TABLES = "Wood Handbook (FPL-GTR-190, 2010), tables 4-3, 4-4, 5-3, 5-5 and 13-5";
const EQUATION = "Wood Handbook (FPL-GTR-190, 2010), eq. 13-2, published for 6 to 14 %";

const PROPERTY = {
  specificGravity: "specific gravity",
  bending: "modulus of rupture",
  elasticity: "modulus of elasticity",
  compressionAlong: "compression along the grain",
  compressionAcross: "compression across the grain",
  shearAlong: "shear along the grain",
  hardness: "hardness",
  movement: "shrinkage",
} as const satisfies Record<ReturnType<typeof missingProperties>[number], string>;

const PART = { body: "body", pin: "cross pin", wedge: "wedge" } as const;
const PLACE = { body: "bedTop", pin: "pinCentre", wedge: "wedgeTip" } as const;

/** Woods that the tables do not hold, or hold only in part: told once for each wood, for all parts made of it. */
export function checkWoods(plane: Elevation): Judgement[] {
  const woods = planeWoods(plane);
  return WOOD_ROLES.map((role) => woods[role])
    .filter(({ sameAsBody }) => !sameAsBody)
    .flatMap((wood) => {
      const { found } = wood.lookUp;
      const parts = WOOD_ROLES.filter((role) => role === wood.role || (wood.role === "body" && woods[role].sameAsBody));
      return found ? noteIncompleteWood(wood, found, parts) : noteUnknownWood(wood, parts);
    });
}

type Parts = readonly NamedWood["role"][];

function noteUnknownWood({ role, name, lookUp }: NamedWood, parts: Parts): Judgement[] {
  const nearest = lookUp.found ? [] : lookUp.nearest;
  const offered = nearest.length > 0 ? `; the nearest are ${nearest.map(quoted).join(", ")}` : "";
  return makeNote({
    code: "wood-unknown",
    value: 0,
    limit: 1,
    unit: "",
    parameters: [`wood.${role}`],
    place: PLACE[role],
    message: `The wood tables hold no ${quoted(name)} (wood.${role})${offered}. Strength and seasons of the ${listed(parts)} are not judged.`,
    source: TABLES,
  });
}

function noteIncompleteWood({ role }: NamedWood, found: Species, parts: Parts): Judgement[] {
  const missing = [...new Set(parts.flatMap((part) => missingProperties(found, part)))];
  if (missing.length === 0) return [];
  return makeNote({
    code: "wood-property-missing",
    value: missing.length,
    limit: 0,
    unit: "",
    parameters: [`wood.${role}`],
    place: PLACE[role],
    message: `The wood tables give ${quoted(found.name)} no ${missing.map((key) => PROPERTY[key]).join(", no ")}. What rests on it is not judged for the ${listed(parts)}; nothing stands in for it.`,
    source: TABLES,
  });
}

const quoted = (name: string): string => `"${name}"`;
const listed = (parts: Parts): string => {
  const names = parts.map((part) => PART[part]);
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
};

/**
 * A moisture beyond 6 … 14 % with a wood of which the tables give no shrinkage, only the change per percent within them.
 * Nothing that the parameters allow brings wood over 30 %, where the other equation ends.
 */
export function checkMoisture(plane: Elevation): Judgement[] {
  const { valid, driest, planned, dampest } = planeSeasons(plane);
  if (valid) return [];
  const moistures = [driest.moisture, planned.moisture, dampest.moisture];
  const [least, most] = [Math.min(...moistures), Math.max(...moistures)];
  const damp = most > CONSTANT_TO;
  const [value, limit, side] = damp ? [most, CONSTANT_TO, "up to"] : [least, CONSTANT_FROM, "down to"];
  return makeNote({
    code: "moisture-outside-equation",
    value,
    limit,
    unit: "%",
    parameters: ["wood.driest.humidity", "wood.dampest.humidity", "wood.moisture"],
    place: "edge",
    message: `The wood comes to ${formatJudgedValue(plane, value, "%")} moisture; the equation of its movement is published ${side} ${formatJudgedValue(plane, limit, "%")}. Take the figures of the seasons as a guide only.`,
    source: EQUATION,
  });
}
