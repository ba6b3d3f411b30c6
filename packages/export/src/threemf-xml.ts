// The XML of a 3MF core document, written and read back: numbers as short decimals, one vertex for each place.

import { type Mesh, triangleCount } from "@lamplane/geometry/mesh";
import { escapeXml, unescapeXml } from "@lamplane/sheets";

/** A mesh as it stands in the build, with what the document calls it. */
export interface NamedMesh {
  readonly name: string;
  readonly mesh: Mesh;
}

const MODEL_NAMESPACE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
const MODEL_TYPE = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
const MODEL_RELATION = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
const RELATIONS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";
const PACKAGE_NAMESPACE = "http://schemas.openxmlformats.org/package/2006";
const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>\n';

/** Where the model lies in the package. @see 3MF Core Specification 1.4.0, 2.2 */
export const MODEL_PATH = "3D/3dmodel.model";

/** [Content_Types].xml. @see 3MF Core Specification 1.4.0, appendix C.1 */
export const contentTypesXml = (): string =>
  `${DECLARATION}<Types xmlns="${PACKAGE_NAMESPACE}/content-types"><Default Extension="rels" ContentType="${RELATIONS_TYPE}"/><Default Extension="model" ContentType="${MODEL_TYPE}"/></Types>\n`;

/** _rels/.rels, which leads to the model. @see 3MF Core Specification 1.4.0, 2.1.1 and appendix C.2 */
export const relationsXml = (): string =>
  `${DECLARATION}<Relationships xmlns="${PACKAGE_NAMESPACE}/relationships"><Relationship Target="/${MODEL_PATH}" Id="model" Type="${MODEL_RELATION}"/></Relationships>\n`;

const MATERIALS_ID = 1;
const FIRST_OBJECT_ID = 2;

/** Solids that keep their places to each other, or that may be moved singly. */
export type Arrangement = "one" | "apart";

/** What a document says of itself. */
export interface ModelMetadata {
  /** Name of the whole, and the document's title. */
  readonly title: string;
  /** Program that wrote it. */
  readonly application: string;
  /** Display colour of each mesh, as "#RRGGBB". */
  readonly colours: readonly string[];
  readonly arrangement: Arrangement;
}

/**
 * The model part: a material and an object for each mesh. What is built is each of them, or one object that holds all in their places.
 * @see 3MF Core Specification 1.4.0, chapters 3 to 5; 3.4.3.1: what interlocks should be components, since items may be moved apart
 */
export function modelXml(
  meshes: readonly NamedMesh[],
  { title, application, colours, arrangement }: ModelMetadata,
): string {
  const bases = meshes.map(({ name }, i) => `<base name="${escapeXml(name)}" displaycolor="${colours[i]}"/>`);
  const ids = meshes.map((_, i) => FIRST_OBJECT_ID + i);
  const whole = FIRST_OBJECT_ID + meshes.length;
  const components = ids.map((id) => `<component objectid="${id}"/>`).join("");
  const wholeObject = `<object id="${whole}" type="model" name="${escapeXml(title)}"><components>${components}</components></object>\n`;
  const built = arrangement === "one" ? [whole] : ids;
  return [
    `${DECLARATION}<model unit="millimeter" xml:lang="en-US" xmlns="${MODEL_NAMESPACE}">\n`,
    `<metadata name="Title">${escapeXml(title)}</metadata>\n<metadata name="Application">${escapeXml(application)}</metadata>\n`,
    `<resources>\n<basematerials id="${MATERIALS_ID}">${bases.join("")}</basematerials>\n`,
    ...meshes.map(objectXml),
    ...(arrangement === "one" ? [wholeObject] : []),
    `</resources>\n<build>${built.map((id) => `<item objectid="${id}"/>`).join("")}</build>\n</model>\n`,
  ].join("");
}

function objectXml({ name, mesh }: NamedMesh, index: number): string {
  const { positions: p, indices } = mesh;
  const places = Array.from(
    { length: p.length / 3 },
    (_, n) => `<vertex x="${p[3 * n]}" y="${p[3 * n + 1]}" z="${p[3 * n + 2]}"/>`,
  );
  const triangles = Array.from({ length: triangleCount(mesh) }, (_, t) => {
    const [v1, v2, v3] = [indices[3 * t], indices[3 * t + 1], indices[3 * t + 2]];
    return `<triangle v1="${v1}" v2="${v2}" v3="${v3}"/>`;
  });
  return [
    `<object id="${FIRST_OBJECT_ID + index}" type="model" name="${escapeXml(name)}" pid="${MATERIALS_ID}" pindex="${index}">`,
    `<mesh>\n<vertices>\n${places.join("\n")}\n</vertices>\n<triangles>\n${triangles.join("\n")}\n</triangles>\n</mesh></object>\n`,
  ].join("");
}

/**
 * The meshes of a model part that `modelXml` wrote; no reader for what other programs write.
 * @throws where an object or its numbers are not as they are written here
 */
export function parseMeshes(xml: string): NamedMesh[] {
  if (!xml.includes('<model unit="millimeter"')) throw new Error("not a model in millimetres");
  const objects = [...xml.matchAll(/<object id="(\d+)" [^>]*? name="([^"]*)"[^>]*><mesh>([\s\S]*?)<\/mesh>/g)];
  const place = xml.includes("<components>") ? /<component objectid="(\d+)"\/>/g : /<item objectid="(\d+)"\/>/g;
  const built = [...xml.matchAll(place)].map((found) => found[1]);
  if (objects.length === 0 || objects.some((object, i) => object[1] !== built[i]) || built.length !== objects.length)
    throw new Error(`a model of ${objects.length} meshes that builds ${built.length}`);
  return objects.map(([, , name, content]) => ({ name: unescapeXml(name!), mesh: parseMesh(name!, content!) }));
}

function parseMesh(name: string, xml: string): Mesh {
  const positions = [...xml.matchAll(/<vertex x="([^"]+)" y="([^"]+)" z="([^"]+)"\/>/g)].flatMap(([, ...at]) =>
    at.map(Number),
  );
  const indices = [...xml.matchAll(/<triangle v1="(\d+)" v2="(\d+)" v3="(\d+)"\/>/g)].flatMap(([, ...numbers]) =>
    numbers.map(Number),
  );
  if (indices.length === 0) throw new Error(`the object ${name} has no triangles`);
  if (Math.max(...indices) >= positions.length / 3) throw new Error(`the object ${name} lacks vertices`);
  return { positions: Float64Array.from(positions), indices: Uint32Array.from(indices) };
}
