// Verdict on the text of a STEP file, from the published standards alone: it shares no line with what writes such files.
// @see ISO 10303-21 (the text), 10303-41 (products, units), 10303-42 (geometry, topology), 10303-44 (assemblies)

import { extremesOf } from "./curves.ts";
import { type Axes, Entities, type Entity, referenceIn, textIn } from "./entities.ts";
import {
  type ExchangeStructure,
  type Parameter,
  parseExchangeStructure,
  type SimpleRecord,
} from "./exchange-structure.ts";
import { type Face, faceOf } from "./faces.ts";
import { judgeShell, type ShellReport } from "./shells.ts";
import { inner, minus, plus, times, type Vector } from "./vectors.ts";

export interface SolidReport extends ShellReport {
  /** Of the product that it is the shape of. */
  readonly product: string;
  /** Box about it where the assembly puts it, or as it lies where there is none, mm. */
  readonly min: Vector;
  readonly max: Vector;
}

export interface Verdict {
  /** Empty for a sound file. */
  readonly faults: readonly string[];
  readonly solids: readonly SolidReport[];
}

/** What a file holds, and all that is wrong with it. */
export function judgeStep(text: string): Verdict {
  try {
    const structure = parseExchangeStructure(text);
    const missing = unresolved(structure);
    if (missing.length > 0) return { faults: missing, solids: [] };
    const entities = new Entities(structure);
    const solids = solidsOf(entities);
    const faults = solids.flatMap((solid) => solid.faults.map((fault) => `${solid.product}: ${fault}`));
    return { faults: [...headerFaults(structure), ...unitFaults(entities), ...faults], solids };
  } catch (error) {
    return { faults: [(error as Error).message], solids: [] };
  }
}

/** @see ISO 10303-21:2016, 8.2: the three entities of the header, in this order */
function headerFaults({ header }: ExchangeStructure): string[] {
  const names = header.map(({ keyword }) => keyword).join(" ");
  return names === "FILE_DESCRIPTION FILE_NAME FILE_SCHEMA" ? [] : [`a header of ${names}`];
}

function unresolved({ instances }: ExchangeStructure): string[] {
  const referred = (parameter: Parameter): number[] => {
    if (parameter.kind === "reference") return [parameter.to];
    if (parameter.kind === "list") return parameter.items.flatMap(referred);
    return parameter.kind === "typed" ? parameter.record.parameters.flatMap(referred) : [];
  };
  return [...instances].flatMap(([number, records]) =>
    records
      .flatMap(({ parameters }) => parameters.flatMap(referred))
      .filter((to) => !instances.has(to))
      .map((to) => `#${number} refers to #${to}, which is nowhere`),
  );
}

/** Millimetres and radians, in every context that shapes stand in. @see ISO 10303-41: si_unit */
function unitFaults(entities: Entities): string[] {
  const units = (keyword: string) =>
    entities.complex(keyword).map(({ records }) => records.get("SI_UNIT")?.parameters.map(enumerated).join(" "));
  const wanted = { LENGTH_UNIT: "MILLI METRE", PLANE_ANGLE_UNIT: "$ RADIAN" };
  const faults = Object.entries(wanted).filter(([keyword, unit]) => String(units(keyword)) !== unit);
  const contexts = entities.complex("GLOBAL_UNIT_ASSIGNED_CONTEXT");
  return [
    ...faults.map(([keyword, unit]) => `${keyword}: ${units(keyword)}, not ${unit}`),
    ...(contexts.length === 1 ? [] : [`${contexts.length} contexts with units`]),
  ];
}

const enumerated = (parameter: Parameter): string => (parameter.kind === "enumeration" ? parameter.text : "$");

function solidsOf(entities: Entities): SolidReport[] {
  const shapes = entities.all("ADVANCED_BREP_SHAPE_REPRESENTATION");
  const solids = shapes.flatMap((shape) => {
    const product = productOf(entities, shape);
    const place = placeOf(entities, shape);
    return entities
      .referredList(shape, 1, "AXIS2_PLACEMENT_3D", "MANIFOLD_SOLID_BREP")
      .filter(({ keyword }) => keyword === "MANIFOLD_SOLID_BREP")
      .map((solid) => ({ number: solid.number, report: solidReport(entities, solid, product, place) }));
  });
  const all = entities.all("MANIFOLD_SOLID_BREP").map(({ number }) => number);
  const shown = solids.map(({ number }) => number);
  if (all.length === 0 || String([...shown].sort()) !== String([...all].sort()))
    throw new Error(`solids ${all}, but shapes hold ${shown}`);
  return solids.map(({ report }) => report);
}

function solidReport(entities: Entities, solid: Entity, product: string, place: (p: Vector) => Vector): SolidReport {
  const shell = entities.referred(solid, 1, "CLOSED_SHELL");
  const faces = entities.referredList(shell, 1, "ADVANCED_FACE").map((face) => faceOf(entities, face));
  return { product, ...judgeShell(faces), ...boxAbout(faces, place) };
}

/** Box about edges in their place. A cylinder or cone reaches no further than the arcs that bound it. */
function boxAbout(faces: readonly Face[], place: (p: Vector) => Vector): { min: Vector; max: Vector } {
  const edges = faces.flatMap(({ bounds }) => bounds.flatMap((bound) => bound.edges.map(({ edge }) => edge)));
  const points = edges.flatMap((edge) => [edge.start.point, ...extremesOf(edge, place)]).map(place);
  const extreme = (best: (...values: number[]) => number): Vector =>
    [0, 1, 2].map((k) => points.reduce((found, p) => best(found, p[k]!), points[0]![k]!)) as unknown as Vector;
  return { min: extreme(Math.min), max: extreme(Math.max) };
}

/** Name of the product whose shape this is. */
const productOf = (entities: Entities, shape: Entity): string => {
  const formation = entities.referred(definitionOf(entities, shape), 2, "PRODUCT_DEFINITION_FORMATION");
  return textIn(entities.referred(formation, 2, "PRODUCT"), 0);
};

/** The one product definition that has this shape. @see ISO 10303-41: shape_definition_representation */
function definitionOf(entities: Entities, shape: Entity): Entity {
  const links = entities
    .all("SHAPE_DEFINITION_REPRESENTATION")
    .filter((link) => referenceIn(link, link.parameters[1]) === shape.number);
  if (links.length !== 1) throw new Error(`#${shape.number}: the shape of ${links.length} products`);
  return entities.referred(entities.referred(links[0]!, 0, "PRODUCT_DEFINITION_SHAPE"), 2, "PRODUCT_DEFINITION");
}

/** Where an assembly puts a shape. @see ISO 10303-43: item_defined_transformation takes its first item to its second */
function placeOf(entities: Entities, shape: Entity): (p: Vector) => Vector {
  const relations = entities
    .complex("REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION")
    .filter(({ records }) => referenceOf(records.get("REPRESENTATION_RELATIONSHIP")!, 2) === shape.number);
  if (relations.length === 0) return (p) => p;
  const { number, records } = relations[0]!;
  if (relations.length > 1 || !isOccurrence(entities, number, definitionOf(entities, shape)))
    throw new Error(`#${shape.number} stands in ${relations.length} places, none of them its own product's`);
  const transformation = referenceOf(records.get("REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION")!, 0);
  const items = entities.at(transformation, ["ITEM_DEFINED_TRANSFORMATION"]);
  const [from, to] = [entities.axes(items, 2), entities.axes(items, 3)];
  return (p) => outOf(to, into(from, p));
}

/** Whether a relation of shapes is that of one use of this product. @see ISO 10303-44: next_assembly_usage_occurrence */
const isOccurrence = (entities: Entities, relation: number, definition: Entity): boolean =>
  entities
    .all("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION")
    .filter((link) => referenceIn(link, link.parameters[0]) === relation)
    .map((link) => entities.referred(link, 1, "PRODUCT_DEFINITION_SHAPE"))
    .map((shape) => entities.referred(shape, 2, "NEXT_ASSEMBLY_USAGE_OCCURRENCE"))
    .some((usage) => entities.referred(usage, 4, "PRODUCT_DEFINITION").number === definition.number);

const referenceOf = (record: SimpleRecord, place: number): number =>
  referenceIn({ number: 0, ...record }, record.parameters[place]);
const into = ({ origin, x, y, z }: Axes, p: Vector): Vector => {
  const d = minus(p, origin);
  return [inner(d, x), inner(d, y), inner(d, z)];
};
const outOf = ({ origin, x, y, z }: Axes, [a, b, c]: Vector): Vector =>
  plus(origin, plus(times(a, x), plus(times(b, y), times(c, z))));
