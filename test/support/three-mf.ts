// A 3MF as two outside readers see it: three's loader, and the 3MF Consortium's own library in its strict mode.
import { DOMParser } from "linkedom";
import type { Mesh } from "three";
import { Box3 } from "three";
import { ThreeMFLoader } from "three/addons/loaders/3MFLoader.js";

export interface ReadPart {
  readonly name: string;
  readonly triangles: number;
  readonly size: readonly [number, number, number];
  readonly min: readonly [number, number, number];
  /** Display colour, sRGB, "rrggbb". */
  readonly colour: string;
}

/** Meshes of a document as three shows them, in its order. */
export function parseWithThree(bytes: Uint8Array): ReadPart[] {
  Object.assign(globalThis, { DOMParser }); // the loader takes a page's
  const group = new ThreeMFLoader().parse(bytes.slice().buffer);
  group.updateMatrixWorld(true);
  const parts: ReadPart[] = [];
  group.traverse((object) => {
    if ((object as Mesh).isMesh) parts.push(partOf(object as Mesh));
  });
  return parts;
}

function partOf(mesh: Mesh): ReadPart {
  const { min, max } = new Box3().setFromObject(mesh, true);
  const { index, attributes } = mesh.geometry;
  const material = mesh.material as unknown as { color: { getHexString(): string } };
  return {
    name: mesh.name,
    triangles: (index?.count ?? attributes.position!.count) / 3,
    size: [max.x - min.x, max.y - min.y, max.z - min.z],
    min: [min.x, min.y, min.z],
    colour: material.color.getHexString(),
  };
}

/**
 * Python that opens a document with lib3mf 1.8 in its strict mode, in which anything that the specification forbids ends the reading,
 * and prints JSON: how many warnings, and each object's name, whether it is a mesh, valid, manifold and oriented.
 */
export const LIB3MF_REPORT = `
import ctypes, json, sys
lib = ctypes.CDLL("lib3MF.so.1")
pointer = ctypes.c_void_p
def call(name, *given):
    code = getattr(lib, "lib3mf_" + name)(*given)
    if code != 0: raise SystemExit("lib3mf_%s failed with %#x" % (name, code))
def told(name, kind, *given):
    value = kind()
    call(name, *given, ctypes.byref(value))
    return value
model = told("createmodel", pointer)
reader = told("model_queryreader", pointer, model, b"3mf")
call("reader_setstrictmodeactive", reader, 1)
call("reader_readfromfileutf8", reader, sys.argv[1].encode())
objects = []
each = told("model_getobjects", pointer, model)
while told("resourceiterator_movenext", ctypes.c_int, each).value:
    one = told("resourceiterator_getcurrent", pointer, each)
    name, needed = ctypes.create_string_buffer(200), ctypes.c_uint32()
    call("object_getnameutf8", one, name, 200, ctypes.byref(needed))
    mesh = bool(told("object_ismeshobject", ctypes.c_int, one).value)
    objects.append({"name": name.value.decode(), "mesh": mesh,
        "valid": bool(told("object_isvalidobject", ctypes.c_int, one).value),
        "closed": bool(told("meshobject_ismanifoldandoriented", ctypes.c_int, one).value) if mesh else None,
        "vertices": told("meshobject_getvertexcount", ctypes.c_uint32, one).value if mesh else None})
print(json.dumps({"warnings": told("reader_getwarningcount", ctypes.c_uint32, reader).value, "objects": objects}))
`;
