// The woods a plane is made of, looked up by their names; what the tables lack is named, and nothing stands in for it.
import type { Elevation } from "@lamplane/parameters/elevation";
import { memoizeByPlane } from "@lamplane/parameters/elevation";
import type { StrengthName } from "@lamplane/parameters/wood";
import { findSpecies, type Species, type SpeciesLookup } from "@lamplane/parameters/wood";

export const WOOD_ROLES = ["body", "pin", "wedge"] as const;
export type WoodRole = (typeof WOOD_ROLES)[number];

/** A wood as the maker named it; `sameAsBody` where `same` was written. */
export interface NamedWood {
  readonly role: WoodRole;
  readonly name: string;
  readonly sameAsBody: boolean;
  readonly lookUp: SpeciesLookup;
}

/** The woods of body, cross pin and wedge. */
export const planeWoods = memoizeByPlane((plane): Readonly<Record<WoodRole, NamedWood>> => {
  const { wood } = plane.design;
  const named = (role: WoodRole): NamedWood => {
    const sameAsBody = role !== "body" && wood[role].trim().toLowerCase() === "same";
    const name = sameAsBody ? wood.body : wood[role];
    return { role, name, sameAsBody, lookUp: findSpecies(name) };
  };
  return { body: named("body"), pin: named("pin"), wedge: named("wedge") };
});

/** The species of a part; undefined where the tables hold no wood of that name. */
export const speciesFor = (plane: Elevation, role: WoodRole): Species | undefined =>
  planeWoods(plane)[role].lookUp.found;

/** What is asked of each wood: strengths, and for all of them how they move. */
export const REQUIRED_STRENGTHS = {
  body: ["compressionAlong", "compressionAcross", "shearAlong"],
  pin: ["bending", "elasticity", "shearAlong", "compressionAcross"],
  wedge: [],
} as const satisfies Record<WoodRole, readonly StrengthName[]>;

/** What a known wood's tables lack of what is asked of it as this part. */
export function missingProperties(found: Species, role: WoodRole): readonly (StrengthName | "movement")[] {
  const strengths = REQUIRED_STRENGTHS[role].filter((name) => found.strength?.[name] === undefined);
  return found.coefficient || found.shrinkage ? strengths : [...strengths, "movement"];
}

/** One wood under whatever spelling; names that the tables lack are one only where they are written alike. */
export function sameSpecies(a: string, b: string): boolean {
  const [first, second] = [findSpecies(a).found?.name, findSpecies(b).found?.name];
  return a === b || (first !== undefined && first === second);
}
