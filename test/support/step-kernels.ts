// STEP files as two builds of the Open CASCADE kernel see them: FreeCAD's, which judges exact solids, and occt-import-js, which shows them.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { volumeOf } from "./meshes.ts";
import { runForStdout } from "./outside-programs.ts";

/** What FreeCAD says of the shape in a file. */
export interface KernelReport {
  readonly valid: boolean;
  /** What its own check of each solid says, its search for faces that cut each other with it; none for a sound one. */
  readonly complaints: readonly string[];
  readonly volumes: readonly number[];
  /** Faces by their kind of surface, and edges by their kind of curve. */
  readonly surfaces: Readonly<Record<string, number>>;
  readonly curves: Readonly<Record<string, number>>;
  /** Smallest upright box about all of it, mm. */
  readonly bounds: readonly [number, number, number, number, number, number];
}

const SCRIPT = `
import Part, json, glob, os
from collections import Counter
def report(path):
    shape = Part.read(path)
    complaints = []
    for solid in shape.Solids:
        try:
            solid.check(True)
        except Exception as error:
            complaints.append(str(error))
    box = shape.BoundBox
    return dict(valid=shape.isValid(), complaints=complaints, volumes=[s.Volume for s in shape.Solids],
                surfaces=Counter(type(f.Surface).__name__ for f in shape.Faces),
                curves=Counter(type(e.Curve).__name__ for e in shape.Edges),
                bounds=[box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax])
here = os.path.dirname(os.path.abspath(__file__))
found = {os.path.basename(path): report(path) for path in glob.glob(os.path.join(here, "*.step"))}
open(os.path.join(here, "report.json"), "w").write(json.dumps(found))
`;

/** FreeCAD's report on each text, by its name. @param command by which FreeCAD runs without a window */
export function freecadReports(command: string, texts: ReadonlyMap<string, string>): Map<string, KernelReport> {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-step-"));
  try {
    for (const [name, text] of texts) writeFileSync(join(folder, `${name}.step`), text);
    writeFileSync(join(folder, "report.py"), SCRIPT);
    runForStdout(command, [join(folder, "report.py")]);
    const found = JSON.parse(readFileSync(join(folder, "report.json"), "utf8")) as Record<string, KernelReport>;
    return new Map(Object.entries(found).map(([name, report]) => [name.replace(/\.step$/, ""), report]));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

interface Node {
  readonly name: string;
  readonly meshes: readonly number[];
  readonly children: readonly Node[];
}
interface Imported {
  readonly success: boolean;
  readonly root: Node;
  readonly meshes: readonly {
    readonly attributes: { readonly position: { readonly array: readonly number[] } };
    readonly index: { readonly array: readonly number[] };
    readonly brep_faces: readonly unknown[];
  }[];
}
interface Occt {
  ReadStepFile(content: Uint8Array, how: object): Imported;
}

/** A solid as the importer shows it. */
export interface ShownSolid {
  readonly name: string;
  readonly faces: number;
  /** mm³, of its triangles. */
  readonly volume: number;
  readonly min: readonly number[];
  readonly max: readonly number[];
}

const occt = (await (createRequire(import.meta.url)("occt-import-js") as () => Promise<Occt>)()) as Occt;

/** Solids of a STEP file in their places. @throws where the importer reads none. */
export function importStep(text: string): ShownSolid[] {
  const how = {
    linearUnit: "millimeter",
    linearDeflectionType: "absolute_value",
    linearDeflection: 0.02,
    angularDeflection: 0.1,
  };
  const { success, root, meshes } = occt.ReadStepFile(new TextEncoder().encode(text), how);
  if (!success) throw new Error("occt-import-js does not read it");
  return meshes.map(({ attributes, index, brep_faces }, i) => {
    const p = attributes.position.array;
    const corner = (n: number) => [p[3 * n]!, p[3 * n + 1]!, p[3 * n + 2]!] as const;
    const triangles = Array.from({ length: index.array.length / 3 }, (_, t) =>
      [0, 1, 2].map((k) => corner(index.array[3 * t + k]!)),
    );
    const along = (k: number) => p.filter((_, n) => n % 3 === k);
    return {
      name: nameOf(i, root) ?? "",
      faces: brep_faces.length,
      volume: volumeOf(triangles),
      min: [0, 1, 2].map((k) => along(k).reduce((a, b) => Math.min(a, b))),
      max: [0, 1, 2].map((k) => along(k).reduce((a, b) => Math.max(a, b))),
    };
  });
}

/** Name of the product that a mesh belongs to: the innermost that has one. */
function nameOf(mesh: number, { name, meshes, children }: Node): string | undefined {
  const inner = children.map((child) => nameOf(mesh, child)).find((found) => found !== undefined);
  if (inner === undefined && !meshes.includes(mesh)) return undefined;
  return inner || name;
}
