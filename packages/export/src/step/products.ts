// Products of a STEP file: what each solid is called, and where it stands in the whole.
import type { Face, Vec3 } from "@lamplane/geometry/mesh";
import { solidBrep } from "./brep.ts";
import { formatString, type Instances, type Reference } from "./instances.ts";

/** Own axes and own 0, 0, 0 of a solid as they lie in the whole. */
export interface AxisPlacement {
  readonly origin: Vec3;
  readonly x: Vec3;
  readonly z: Vec3;
}

/** A thing with a name, of one closed shell or several. */
export interface NamedShells {
  readonly name: string;
  readonly shells: readonly (readonly Face[])[];
}

const ORIGIN: AxisPlacement = { origin: [0, 0, 0], x: [1, 0, 0], z: [0, 0, 1] };

/** Accuracy of the geometry, mm. */
const ACCURACY = "1.E-6";

/** What all products of a file share: application, units. @see ISO 10303-214, ISO 10303-41 */
export interface FileContext {
  readonly product: Reference;
  readonly definition: Reference;
  readonly geometry: Reference;
}

export function fileContext(file: Instances): FileContext {
  const application = file.add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
  file.add(`APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,${application})`);
  const length = file.add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
  const angle = file.add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
  const solidAngle = file.add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
  const accuracy = file.add(
    `UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(${ACCURACY}),${length},'distance_accuracy_value','')`,
  );
  return {
    product: file.add(`PRODUCT_CONTEXT('',${application},'mechanical')`),
    definition: file.add(`PRODUCT_DEFINITION_CONTEXT('part definition',${application},'design')`),
    geometry: file.add(
      `(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((${accuracy}))GLOBAL_UNIT_ASSIGNED_CONTEXT((${length},${angle},${solidAngle}))REPRESENTATION_CONTEXT('',''))`,
    ),
  };
}

/** A product's definition and its shape. */
interface Product {
  readonly definition: Reference;
  readonly shape: Reference;
}

/** A product whose shape is its solids. */
export function partProduct(file: Instances, context: FileContext, { name, shells }: NamedShells): Product {
  const solids = shells.map((faces) => solidBrep(file, name, faces));
  const items = [file.placement(ORIGIN), ...solids].join(",");
  const shape = file.add(`ADVANCED_BREP_SHAPE_REPRESENTATION(${formatString(name)},(${items}),${context.geometry})`);
  return addProduct(file, context, name, shape);
}

/** A product whose shape is other products in their places. */
export function assemblyProduct(
  file: Instances,
  context: FileContext,
  name: string,
  parts: readonly (NamedShells & { readonly placement: AxisPlacement })[],
): Product {
  const placed = parts.map((part) => ({
    ...part,
    ...partProduct(file, context, part),
    at: file.placement(part.placement),
  }));
  const items = [file.placement(ORIGIN), ...placed.map(({ at }) => at)].join(",");
  const shape = file.add(`SHAPE_REPRESENTATION(${formatString(name)},(${items}),${context.geometry})`);
  const whole = addProduct(file, context, name, shape);
  for (const part of placed) addOccurrence(file, whole, part);
  return whole;
}

function addProduct(file: Instances, context: FileContext, name: string, shape: Reference): Product {
  const text = formatString(name);
  const product = file.add(`PRODUCT(${text},${text},'',(${context.product}))`);
  file.add(`PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,(${product}))`);
  const formation = file.add(`PRODUCT_DEFINITION_FORMATION('','',${product})`);
  const definition = file.add(`PRODUCT_DEFINITION('design','',${formation},${context.definition})`);
  const property = file.add(`PRODUCT_DEFINITION_SHAPE('','',${definition})`);
  file.add(`SHAPE_DEFINITION_REPRESENTATION(${property},${shape})`);
  return { definition, shape };
}

/** A part in its place in the whole. */
function addOccurrence(file: Instances, whole: Product, part: Product & { name: string; at: Reference }): void {
  const name = formatString(part.name);
  const usage = file.add(`NEXT_ASSEMBLY_USAGE_OCCURRENCE(${name},${name},'',${whole.definition},${part.definition},$)`);
  const property = file.add(`PRODUCT_DEFINITION_SHAPE('','',${usage})`);
  const transform = file.add(`ITEM_DEFINED_TRANSFORMATION('','',${file.placement(ORIGIN)},${part.at})`);
  const relation = file.add(
    `(REPRESENTATION_RELATIONSHIP('','',${part.shape},${whole.shape})REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(${transform})SHAPE_REPRESENTATION_RELATIONSHIP())`,
  );
  file.add(`CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(${relation},${property})`);
}
