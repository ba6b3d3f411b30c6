// Files: STL, 3MF, DXF, CSV, zip and checksums, against their published formats.
import { dxfText, serializeThreeMf, sha256Hex, stlBytes, zipArchive } from "@lamplane/export/bytes";
import { arc, line, type Outline, point } from "@lamplane/geometry";
import { elevation } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { unzipSync } from "fflate";
import { computeSweepLines, headerLine, type Sweep } from "../../packages/cli/src/sweep/rows.ts";
import { parseVariations } from "../../packages/cli/src/sweep/variations.ts";
import { designWith, WORKED } from "../support/designs.ts";
import type { OutsideCheck } from "./check.ts";
import { fact, size } from "./rows.ts";

const plane = elevation(designWith(WORKED));
const parts = partsOf(plane, "blank");
const [block] = parts;

const stl = () => stlBytes(block!.lyingMesh, block!.name, block!.volume);
const stlView = () => {
  const bytes = stl();
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
};
const BOURKE = ["P. Bourke, “STL format”", "read"] as const;
/** Facets of an STL, each the twelve numbers in it. */
const facets = () => {
  const view = stlView();
  return Array.from({ length: view.getUint32(80, true) }, (_, i) =>
    Array.from({ length: 12 }, (_, k) => view.getFloat32(84 + 50 * i + 4 * k, true)),
  );
};
/** How far each normal is off that of its corners by the right hand. */
function normalOff([nx, ny, nz, ax, ay, az, bx, by, bz, cx, cy, cz]: number[]): number {
  const [p, q] = [
    [bx! - ax!, by! - ay!, bz! - az!],
    [cx! - ax!, cy! - ay!, cz! - az!],
  ] as const;
  const cross = [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]];
  const length = Math.hypot(...cross);
  return Math.hypot(nx! - cross[0]! / length, ny! - cross[1]! / length, nz! - cross[2]! / length);
}
const stls: readonly OutsideCheck[] = [
  fact("STL of a box's 12 facets: bytes", BOURKE, 684, () => stl().length),
  fact("STL: number of facets after 80 bytes, little-endian", BOURKE, 12, () => stlView().getUint32(80, true)),
  fact("STL: header does not begin as the text format's", BOURKE, "yes", () =>
    new TextDecoder("latin1").decode(stl().subarray(0, 5)).toLowerCase() === "solid" ? "no" : "yes",
  ),
  fact("STL: attribute bytes that are not 0", BOURKE, 0, () => {
    const view = stlView();
    return facets().filter((_, i) => view.getUint16(84 + 50 * i + 48, true) !== 0).length;
  }),
  size("STL: facet normals off the right hand's", BOURKE, "", 0, () => Math.max(...facets().map(normalOff)), 1e-5),
  fact("STL: edges of a box that two facets share", BOURKE, 18, () => {
    const edges = new Map<string, number>();
    for (const facet of facets()) {
      const corners = [3, 6, 9].map((k) => facet.slice(k, k + 3).join());
      corners.forEach((a, i) => {
        const edge = [a, corners[(i + 1) % 3]!].sort().join(" ");
        edges.set(edge, (edges.get(edge) ?? 0) + 1);
      });
    }
    return [...edges.values()].filter((count) => count === 2).length;
  }),
];

const quarter: Outline = [
  line(point(0, 0), point(10, 0)),
  arc(point(10, 0), point(0, 10), point(0, 0), 90),
  line(point(0, 10), point(0, 0)),
];
const AUTODESK = ["Autodesk, DXF reference", "read"] as const;
const dxf = (outline: Outline = quarter) =>
  dxfText({
    title: "sample",
    entries: [
      { kind: "outline", work: "CUT", outline },
      { kind: "circle", work: "DRILL", circle: { centre: point(2, 2), radius: 1.25 } },
    ],
  });
/** Value of a group code, the first after a mark. */
function group(text: string, after: string, code: number): string {
  const lines = text
    .slice(text.indexOf(after))
    .split("\n")
    .map((each) => each.trim());
  const at = lines.findIndex((each, i) => i % 2 === 1 && each === String(code));
  return lines[at + 1] ?? "";
}
const slice = (sweep: number): Outline => {
  const turned = (angle: number) =>
    point(10 * Math.cos((angle * Math.PI) / 180), 10 * Math.sin((angle * Math.PI) / 180));
  return [
    line(point(0, 0), turned(0)),
    arc(turned(0), turned(sweep), point(0, 0), sweep),
    line(turned(sweep), point(0, 0)),
  ];
};
const bulge = (sweep: number) => () => Number(group(dxf(slice(sweep)), "LWPOLYLINE", 42));
const dxfs: readonly OutsideCheck[] = [
  fact("DXF: $INSUNITS for millimetres", AUTODESK, 4, () => Number(group(dxf(), "$INSUNITS", 70))),
  fact("DXF: version, R2000 or newer (AC1015)", AUTODESK, "yes", () =>
    group(dxf(), "$ACADVER", 1) >= "AC1015" ? "yes" : "no",
  ),
  fact("DXF: flag of a closed polyline", AUTODESK, 1, () => Number(group(dxf(), "AcDbPolyline", 70)) & 1),
  size("DXF: bulge of 90°, tan(90°/4)", AUTODESK, "", 0.41421356, bulge(90), 5e-9),
  size("DXF: bulge of 45°", AUTODESK, "", 0.19891237, bulge(45), 5e-9),
  size("DXF: bulge of half a circle", AUTODESK, "", 1, bulge(180), 1e-9),
  size("DXF: radius of a circle, group 40", AUTODESK, "mm", 1.25, () => Number(group(dxf(), "AcDbCircle", 40)), 0),
  fact(
    "DXF: signs that a layer's name may not have",
    ["Autodesk, layer names", "from memory"],
    0,
    () =>
      [...dxf().matchAll(/AcDbLayerTableRecord\s+2\s+(.*)/g)].filter(([, name]) => /[<>/\\":;?*|=`]/.test(name!))
        .length,
  ),
];

const CORE = ["3MF Core Specification 1.4.0", "read"] as const;
const threeMfFiles = () => unzipSync(serializeThreeMf(parts, { name: "worked", version: "0" }));
const model = () => new TextDecoder().decode(threeMfFiles()["3D/3dmodel.model"]);
const threeMfs: readonly OutsideCheck[] = [
  fact("3MF: unit", CORE, "millimeter", () => /<model[^>]* unit="(\w+)"/.exec(model())?.[1] ?? ""),
  fact(
    "3MF: namespace",
    CORE,
    "http://schemas.microsoft.com/3dmanufacturing/core/2015/02",
    () => /xmlns="([^"]+)"/.exec(model())?.[1] ?? "",
  ),
  fact(
    "3MF: type of the model in the package",
    CORE,
    "application/vnd.ms-package.3dmanufacturing-3dmodel+xml",
    () =>
      /Extension="model" ContentType="([^"]+)"/.exec(
        new TextDecoder().decode(threeMfFiles()["[Content_Types].xml"]),
      )?.[1] ?? "",
  ),
  fact(
    "3MF: relationship that leads to the model",
    CORE,
    "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel",
    () => / Type="([^"]+)"/.exec(new TextDecoder().decode(threeMfFiles()["_rels/.rels"]))?.[1] ?? "",
  ),
  fact("3MF: coordinates under 0 (3.3: positive octant)", CORE, 0, () => [...model().matchAll(/ [xyz]="-/g)].length),
  fact(
    "3MF: colours that are not #RRGGBB",
    CORE,
    0,
    () =>
      [...model().matchAll(/displaycolor="([^"]*)"/g)].filter(
        ([, colour]) => !/^#[0-9A-F]{6}([0-9A-F]{2})?$/.test(colour!),
      ).length,
  ),
];

const RFC_4180 = ["RFC 4180, 2 (servicenow.com, CSV primer)", "quoted"] as const;
const SWEEP: Sweep = {
  design: plane.design,
  variations: parseVariations(["bed.angle=45..47:1"], plane.design),
  figures: ["glueGap"],
};
const header = () => headerLine(SWEEP);
const cells = (text: string): number => text.trim().split(",").length;
const csvs: readonly OutsideCheck[] = [
  fact("CSV: end of a line (2.1)", RFC_4180, "CR LF", () => (/^[^\r\n]*\r\n$/.test(header()) ? "CR LF" : "another")),
  fact(
    "CSV: a row's cells beside its header's (2.4)",
    RFC_4180,
    0,
    () => cells(computeSweepLines(SWEEP, 0, 1)) - cells(header()),
  ),
];

const FIPS = ["NIST FIPS 180-2, appendix B (Chromium, crypto/sha2_unittest.cc)", "quoted"] as const;
const CATACOMB = ["catacomb, symm/t/sha256", "read"] as const;
const APPNOTE = ["PKWARE, APPNOTE.TXT 6.3.4, local file header (gist.github.com/ysakasin)", "quoted"] as const;
const ZIP_DATE = ["PKWARE, APPNOTE.TXT, 4.4.6", "from memory"] as const;
const bytes = (text: string) => new TextEncoder().encode(text);
const zipView = () => new DataView(zipArchive(new Map([["a", "b"]])).slice().buffer);
const NOTHING = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
const ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
const MILLION = "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0";
export const SHA_256 = { nothing: NOTHING, abc: ABC } as const;
const archives: readonly OutsideCheck[] = [
  fact("SHA-256 of nothing", CATACOMB, NOTHING, () => sha256Hex(bytes(""))),
  fact("SHA-256 of “abc”", FIPS, ABC, () => sha256Hex(bytes("abc"))),
  fact("SHA-256 of a million times “a”", CATACOMB, MILLION, () => sha256Hex(new Uint8Array(1_000_000).fill(0x61))),
  fact("Zip: signature of a file in it", APPNOTE, 0x04034b50, () => zipView().getUint32(0, true)),
  fact("Zip: date, the format's first (1 January 1980)", ZIP_DATE, 0x0021, () => zipView().getUint16(12, true)),
];

export const FORMAT_CHECKS: readonly OutsideCheck[] = [...stls, ...dxfs, ...threeMfs, ...csvs, ...archives];
