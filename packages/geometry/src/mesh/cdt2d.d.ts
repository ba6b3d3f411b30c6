// The part of cdt2d that is used; it has no types of its own.
declare module "cdt2d" {
  interface Options {
    /** Whether triangles within the edges, and those without, are wanted. */
    readonly interior?: boolean;
    readonly exterior?: boolean;
    readonly delaunay?: boolean;
  }
  /** Triangles, by the numbers of their points, of the areas that an odd number of edges parts from the outside. */
  export default function cdt2d(
    points: readonly (readonly [number, number])[],
    edges: readonly (readonly [number, number])[],
    options?: Options,
  ): [number, number, number][];
}
