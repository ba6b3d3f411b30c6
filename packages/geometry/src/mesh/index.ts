// Door: solids as lists of exact faces and as indexed triangle meshes.
export * from "./extrude.ts";
export * from "./face.ts";
export * from "./face-volume.ts";
export * from "./gate.ts";
export * from "./measures.ts";
export * from "./mesh.ts";
export * from "./tessellate-faces.ts";
export * from "./triangulate.ts";
export * from "./vectors.ts";
