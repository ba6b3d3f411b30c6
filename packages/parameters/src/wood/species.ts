// A species looked up by name, with every value its source gives; what a table lacks stays undefined, never filled in.

import { COEFFICIENTS, SHRINKAGES, STRENGTHS, type StrengthName, type StrengthRow } from "./species-data.ts";
import { hasWordsOf, nearestWoodNames } from "./spelling.ts";
import { TRADE_NAMES } from "./trade-names.ts";

/** How a value came here: read in the source named, written from memory, or computed from another. */
export type Tag = "read" | "from memory" | "computed";

interface Sourced {
  /** Where the values stand, word for word as the data were collected. */
  readonly source: string;
  /** Every tag that the source gives; `from memory` among them means: look at the original before relying on it. */
  readonly tags: readonly Tag[];
}

/** Averages for clear, straight-grained wood at 12 % moisture; stresses MPa (elasticity too), hardness N. Not design values. */
export interface Strength extends Sourced, Readonly<Record<StrengthName, number | undefined>> {
  readonly fromMemory: readonly StrengthName[];
}

/** Two values across the grain: square to the rings and along them. */
export interface AcrossGrain {
  readonly radial: number;
  readonly tangential: number;
}

export interface Species {
  readonly name: string;
  readonly latin: string | undefined;
  readonly strength: Strength | undefined;
  /** Change across the grain per percent of moisture, 6 … 14 %. */
  readonly coefficient: (AcrossGrain & Sourced) | undefined;
  /** Percent, green to ovendry. */
  readonly shrinkage: (AcrossGrain & Sourced & { readonly volume: number }) | undefined;
}

/** A species, by a name of the trade where `isTradeName`; or the names that come near to one that the tables do not hold. */
export type SpeciesLookup =
  | { readonly found: Species; readonly isTradeName: boolean }
  | { readonly found?: undefined; readonly nearest: readonly string[] };

/**
 * The species of a name in any order, case and punctuation (`beech, american`, `American beech`), by its Latin name, or by
 * the trade's (`hard maple`). A misspelt name is never guessed: it comes back with those that are near it.
 */
export function findSpecies(name: string): SpeciesLookup {
  const known = LOOKED_UP.get(name);
  if (known) return known;
  if (LOOKED_UP.size >= KEPT) LOOKED_UP.clear();
  const result = lookUpSpecies(name);
  LOOKED_UP.set(name, result);
  return result;
}

/** Answers kept, for the checks ask the same name hundreds of times; so few that typing cannot fill the memory. */
const KEPT = 64;
const LOOKED_UP = new Map<string, SpeciesLookup>();

function lookUpSpecies(name: string): SpeciesLookup {
  const isMeant = hasWordsOf(name);
  const found = SPECIES.find((wood) => namesOf(wood).some(isMeant));
  if (found) return { found, isTradeName: false };
  const species = TRADE_NAMES.find(([trade]) => isMeant(trade))?.[1];
  const meant = SPECIES.find((wood) => wood.name === species);
  if (meant) return { found: meant, isTradeName: true };
  return { nearest: nearestWoodNames(name, [...speciesNames(), ...TRADE_NAMES.map(([trade]) => trade)]) };
}

/** All species of the tables, in alphabetical order. */
export const speciesNames = (): readonly string[] => SPECIES.map((wood) => wood.name);

/** Two tables that call one wood by two names; the first is kept. */
const SAME_WOOD: readonly (readonly [name: string, other: string])[] = [
  ["Oak, live", "Live oak"],
  ["Mahogany, true", "Mahogany (Swietenia)"],
];

const SPECIES: readonly Species[] = [...STRENGTHS, ...COEFFICIENTS, ...SHRINKAGES]
  .map(([name]) => canonicalName(name))
  .filter((name, i, all) => all.indexOf(name) === i)
  .sort()
  .map(speciesOf);

function canonicalName(name: string): string {
  return SAME_WOOD.find(([, other]) => other === name)?.[0] ?? name;
}

function speciesOf(name: string): Species {
  const strength = STRENGTHS.find((row) => row[0] === name);
  const coefficient = COEFFICIENTS.find((row) => canonicalName(row[0]) === name);
  const shrinkage = SHRINKAGES.find((row) => canonicalName(row[0]) === name);
  return {
    name,
    latin: strength?.[1],
    strength: strength && strengthOf(strength),
    coefficient: coefficient && { radial: coefficient[1], tangential: coefficient[2], ...makeSourced(coefficient[3]) },
    shrinkage: shrinkage && {
      radial: shrinkage[1],
      tangential: shrinkage[2],
      volume: shrinkage[3],
      ...makeSourced(shrinkage[4]),
    },
  };
}

function strengthOf(row: StrengthRow): Strength {
  const [, , specificGravity, bending, gigapascals, compressionAlong, compressionAcross, shearAlong, hardness] = row;
  const elasticity = gigapascals && gigapascals * 1000;
  const values = { specificGravity, bending, elasticity, compressionAlong, compressionAcross, shearAlong, hardness };
  const known = (Object.keys(values) as StrengthName[]).filter((key) => values[key] !== undefined);
  return { ...values, ...makeSourced(row[9]), fromMemory: row[10] === "all" ? known : row[10] };
}

function makeSourced(source: string): Sourced {
  const tags: Tag[] = [];
  if (/\bread\b/.test(source)) tags.push("read");
  if (/\bmemory\b/.test(source)) tags.push("from memory");
  if (/\bcomputed\b/.test(source)) tags.push("computed");
  return { source, tags };
}

/** A name as it stands, without what is in brackets, and with only that; and the Latin one. */
function namesOf({ name, latin }: Species): string[] {
  const plain = name.replace(/\s*\(.*\)/, "");
  const inBrackets = /\((\w+)\)/.exec(name)?.[1];
  const others = SAME_WOOD.filter(([kept]) => kept === name).map(([, other]) => other);
  return [name, plain, ...(inBrackets ? [inBrackets] : []), ...others, ...(latin ? [latin] : [])];
}
