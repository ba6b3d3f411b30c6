// STEP files (AP214, mm): a part's or jig's exact solids, or all parts in their places. Planes, cylinders and cones, never facets.
import type { Vec3 } from "@lamplane/geometry/mesh";
import { formatString, Instances } from "./instances.ts";
import {
  type AxisPlacement,
  assemblyProduct,
  type FileContext,
  fileContext,
  type NamedShells,
  partProduct,
} from "./products.ts";

export type { NamedShells } from "./products.ts";

/** A part as it lies, with the place in the plane's frame of its own axes and zero. */
export interface PosedShells extends NamedShells {
  readonly pose: AxisPlacement;
}

/**
 * One part or jig. The same faces and version give the same text.
 * @throws Error (our bug) where a shell does not close
 * @see ISO 10303-21 (the text), ISO 10303-214 (automotive design)
 */
export const partStep = (part: NamedShells, version: string): string =>
  stepText(part.name, version, (file, context) => partProduct(file, context, part));

/** Parts in their places: the plane stands on its sole, x to the heel, z up; 0 is the plane's own. Throws as `partStep` does. */
export const assemblyStep = (name: string, parts: readonly PosedShells[], version: string): string =>
  stepText(name, version, (file, context) =>
    assemblyProduct(
      file,
      context,
      name,
      parts.map(({ pose, ...part }) => ({ ...part, placement: standOnSole(pose) })),
    ),
  );

/** The plane's frame has y up, a STEP file z. */
const standOnSole = ({ origin, x, z }: AxisPlacement): AxisPlacement => ({
  origin: rise(origin),
  x: rise(x),
  z: rise(z),
});
const rise = ([x, y, z]: Vec3): Vec3 => [x, -z, y];

/** Zip entries' first day: a file's bytes do not tell when it was made. */
const TIME_STAMP = "1980-01-01T00:00:00";

function stepText(name: string, version: string, write: (file: Instances, context: FileContext) => unknown): string {
  const file = new Instances();
  write(file, fileContext(file));
  const maker = formatString(`lamplane ${version}`);
  return `ISO-10303-21;
HEADER;
FILE_DESCRIPTION(('planes, cylinders and cones, mm'),'2;1');
FILE_NAME(${formatString(name)},'${TIME_STAMP}',(''),(''),${maker},${maker},'');
FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));
ENDSEC;
DATA;
${file.text()}ENDSEC;
END-ISO-10303-21;
`;
}
