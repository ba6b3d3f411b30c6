// What the drawing in 3D is made of: meshes as arrays, which travel by transfer.

/** One part's mesh: corners three to a triangle, edges two corners each, section lines and cut face at the centre plane. */
export interface PartMesh {
  readonly name: string;
  readonly corners: Float32Array;
  readonly edges: Float32Array;
  readonly section: Float32Array;
  /** The face laid open by the cut, three corners to a triangle. */
  readonly cap: Float32Array;
  /** Grain direction, and the middle of the part for its label. */
  readonly grain: readonly [number, number, number];
  readonly middle: readonly [number, number, number];
}

/** What the drawing in 3D must know besides its parts. Angles in degrees, mm. */
export interface BodyInfo {
  readonly rings: number;
  readonly bedAngle: number;
  readonly bodyWidth: number;
}
