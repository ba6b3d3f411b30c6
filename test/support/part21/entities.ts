// Instances as the entities that they are: attributes by their places in the standard's declarations, nothing assumed.
import type { ExchangeStructure, Parameter, SimpleRecord } from "./exchange-structure.ts";
import { inner, minus, outer, size, times, unit, type Vector } from "./vectors.ts";

/** An instance of an entity that the judge knows. */
export interface Entity {
  readonly number: number;
  readonly keyword: string;
  readonly parameters: readonly Parameter[];
}

/** Right-handed axes of length 1 about an origin. */
export interface Axes {
  readonly origin: Vector;
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
}

export class Entities {
  readonly #structure: ExchangeStructure;

  constructor(structure: ExchangeStructure) {
    this.#structure = structure;
  }

  /** All simple instances of an entity. */
  all(keyword: string): Entity[] {
    return [...this.#structure.instances]
      .filter(([, records]) => records.length === 1 && records[0]!.keyword === keyword)
      .map(([number]) => this.at(number, [keyword]));
  }

  /** Complex instances that have a record of this keyword. */
  complex(keyword: string): { readonly number: number; readonly records: Map<string, SimpleRecord> }[] {
    return [...this.#structure.instances]
      .filter(([, records]) => records.length > 1 && records.some((record) => record.keyword === keyword))
      .map(([number, records]) => ({ number, records: new Map(records.map((record) => [record.keyword, record])) }));
  }

  /** @throws Error where the instance is missing or is of no such entity */
  at(number: number, keywords: readonly string[]): Entity {
    const records = this.#structure.instances.get(number);
    if (!records) throw new Error(`#${number} is nowhere`);
    const [record] = records;
    if (records.length !== 1 || !keywords.includes(record!.keyword))
      throw new Error(
        `#${number} is ${records.map(({ keyword }) => keyword).join(" and ")}, not ${keywords.join(" or ")}`,
      );
    return { number, ...record! };
  }

  /** What an attribute refers to. @param place of the attribute, the name of the item being 0 */
  referred(entity: Entity, place: number, ...keywords: string[]): Entity {
    return this.at(referenceIn(entity, entity.parameters[place]), keywords);
  }

  referredList(entity: Entity, place: number, ...keywords: string[]): Entity[] {
    return listIn(entity, place).map((item) => this.at(referenceIn(entity, item), keywords));
  }

  /** @see ISO 10303-42: cartesian_point */
  point(entity: Entity, place: number): Vector {
    return vectorIn(this.referred(entity, place, "CARTESIAN_POINT"), 1);
  }

  /** Of length 1: a direction's ratios tell nothing by their size. @see ISO 10303-42: direction */
  direction(entity: Entity, place: number): Vector {
    return unit(vectorIn(this.referred(entity, place, "DIRECTION"), 1));
  }

  /** @see ISO 10303-42: axis2_placement_3d, build_axes, first_proj_axis: x is what of ref_direction is square to z */
  axes(entity: Entity, place: number): Axes {
    const placement = this.referred(entity, place, "AXIS2_PLACEMENT_3D");
    const given = (at: number, otherwise: Vector) =>
      placement.parameters[at]?.kind === "unset" ? otherwise : this.direction(placement, at);
    const z = given(2, [0, 0, 1]);
    const towards = given(3, Math.abs(z[0]) < 1 - 1e-12 ? [1, 0, 0] : [0, 1, 0]);
    const square = minus(towards, times(inner(towards, z), z));
    if (size(square) < 1e-6) throw new Error(`#${placement.number}: ref_direction lies along the axis`);
    const x = unit(square);
    return { origin: this.point(placement, 1), x, y: outer(z, x), z };
  }
}

/** @throws Error where the parameter refers to nothing */
export function referenceIn(entity: Entity, parameter: Parameter | undefined): number {
  if (parameter?.kind !== "reference") throw new Error(`#${entity.number} ${entity.keyword}: a reference is missing`);
  return parameter.to;
}

export function listIn(entity: Entity, place: number): readonly Parameter[] {
  const parameter = entity.parameters[place];
  if (parameter?.kind !== "list" || parameter.items.length === 0)
    throw new Error(`#${entity.number} ${entity.keyword}: attribute ${place} is no list of something`);
  return parameter.items;
}

export function textIn(entity: Entity, place: number): string {
  const parameter = entity.parameters[place];
  if (parameter?.kind !== "string")
    throw new Error(`#${entity.number} ${entity.keyword}: attribute ${place} is no text`);
  return parameter.text;
}

/** @throws Error where the attribute is no BOOLEAN */
export function booleanIn(entity: Entity, place: number): boolean {
  const parameter = entity.parameters[place];
  if (parameter?.kind !== "enumeration" || !["T", "F"].includes(parameter.text))
    throw new Error(`#${entity.number} ${entity.keyword}: attribute ${place} is neither .T. nor .F.`);
  return parameter.text === "T";
}

/** A measure is a REAL: an integer will not do. */
export function realIn(entity: Entity, place: number): number {
  return realOf(entity, entity.parameters[place]);
}

function realOf(entity: Entity, parameter: Parameter | undefined): number {
  if (parameter?.kind !== "real") throw new Error(`#${entity.number} ${entity.keyword}: a real is missing`);
  return parameter.value;
}

function vectorIn(entity: Entity, place: number): Vector {
  const items = listIn(entity, place).map((item) => realOf(entity, item));
  if (items.length !== 3) throw new Error(`#${entity.number} ${entity.keyword}: ${items.length} numbers, not 3`);
  return items as unknown as Vector;
}
