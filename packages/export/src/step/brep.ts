// Faces → one MANIFOLD_SOLID_BREP: the same list that the mesh is cut from, each corner and each edge once.
import {
  type ArcEdge,
  cross,
  dot,
  type Edge,
  type Face,
  type Loop,
  normalize,
  reverseEdge,
  type Surface,
  scale,
  subtract,
  type Vec3,
} from "@lamplane/geometry/mesh";
import { formatReal, formatString, type Instances, type Reference } from "./instances.ts";

/**
 * A closed shell as a solid.
 * @param name of the solid, in errors and in the file
 * @throws Error (our bug) where an edge is not run once each way
 * @see ISO 10303-42: geometry, topology and solid models
 */
export function solidBrep(file: Instances, name: string, faces: readonly Face[]): Reference {
  const edges = new EdgeCurves(file);
  const written = faces.map((face) => advancedFace(file, edges, face));
  edges.assertClosed(name);
  const shell = file.add(`CLOSED_SHELL('',(${written.join(",")}))`);
  return file.add(`MANIFOLD_SOLID_BREP(${formatString(name)},${shell})`);
}

function advancedFace(file: Instances, edges: EdgeCurves, { surface, loops }: Face): Reference {
  const bounds = loops.map((loop, i) => {
    const around = file.add(`EDGE_LOOP('',(${loop.map((edge) => edges.oriented(edge)).join(",")}))`);
    return file.add(`${i === 0 ? "FACE_OUTER_BOUND" : "FACE_BOUND"}('',${around},.T.)`);
  });
  const isOutward = surface.kind === "plane" || surface.convex;
  return file.add(
    `ADVANCED_FACE('',(${bounds.join(",")}),${surfaceInstance(file, surface, loops[0]!)},${isOutward ? ".T." : ".F."})`,
  );
}

/** The surface, its normal out of the solid for a plane, away from the axis for the others. */
function surfaceInstance(file: Instances, surface: Surface, loop: Loop): Reference {
  if (surface.kind === "plane") {
    const { from, to } = loop[0]!;
    const origin = from;
    return file.addOnce(
      `PLANE('',${file.placement({ origin, z: surface.normal, x: squareTo(surface.normal, subtract(to, from)) })})`,
    );
  }
  const { origin, axis, radius } = surface;
  const place = file.placement({ origin, z: axis, x: squareTo(axis, subtract(firstCorner(loop, axis), origin)) });
  return surface.kind === "cylinder"
    ? file.addOnce(`CYLINDRICAL_SURFACE('',${place},${formatReal(radius)})`)
    : file.addOnce(
        `CONICAL_SURFACE('',${place},${formatReal(radius)},${formatReal((surface.halfAngle * Math.PI) / 180, 15)})`,
      );
}

/** Where a curved face begins, counter-clockwise about the axis: its seam lies there, never within the face. */
function firstCorner(loop: Loop, axis: Vec3): Vec3 {
  const arc = loop.find((edge): edge is ArcEdge => edge.kind === "arc")!;
  return arc.sweep * dot(arc.axis, axis) > 0 ? arc.from : arc.to;
}

/** The part of a vector that is square to an axis, of length 1. */
const squareTo = (axis: Vec3, v: Vec3): Vec3 => normalize(subtract(v, scale(axis, dot(axis, v))));

/** Edges by their ends and the side to which they bulge, whichever way they are run. */
class EdgeCurves {
  readonly #file: Instances;
  readonly #vertices = new Map<string, { readonly reference: Reference; readonly number: number }>();
  readonly #curves = new Map<string, { readonly reference: Reference; readonly runs: [there: number, back: number] }>();

  constructor(file: Instances) {
    this.#file = file;
  }

  /** The edge as a face runs along it. */
  oriented(edge: Edge): Reference {
    const isForward = this.#vertex(edge.from).number < this.#vertex(edge.to).number;
    const forward = isForward ? edge : reverseEdge(edge);
    const key = `${forward.from} ${forward.to} ${bulgeOf(forward)}`;
    const known = this.#curves.get(key) ?? { reference: this.#edgeCurve(forward), runs: [0, 0] as [number, number] };
    this.#curves.set(key, known);
    known.runs[isForward ? 0 : 1]++;
    return this.#file.add(`ORIENTED_EDGE('',*,*,${known.reference},${isForward ? ".T." : ".F."})`);
  }

  assertClosed(name: string): void {
    const open = [...this.#curves.values()].filter(({ runs: [there, back] }) => there !== 1 || back !== 1).length;
    if (open > 0)
      throw new Error(`${name}: ${open} edges of its faces do not part two of them; that is no closed solid`);
  }

  #vertex(p: Vec3) {
    const known = this.#vertices.get(String(p));
    if (known) return known;
    const made = {
      reference: this.#file.add(`VERTEX_POINT('',${this.#file.point(p)})`),
      number: this.#vertices.size,
    };
    this.#vertices.set(String(p), made);
    return made;
  }

  #edgeCurve(edge: Edge): Reference {
    const [from, to] = [this.#vertex(edge.from).reference, this.#vertex(edge.to).reference];
    const curve = edge.kind === "line" ? this.#line(edge) : this.#circle(edge);
    return this.#file.add(`EDGE_CURVE('',${from},${to},${curve},.T.)`);
  }

  #line({ from, to }: Edge): Reference {
    const vector = this.#file.addOnce(`VECTOR('',${this.#file.direction(normalize(subtract(to, from)))},1.)`);
    return this.#file.add(`LINE('',${this.#file.point(from)},${vector})`);
  }

  /** A circle runs counter-clockwise about its axis, from its x axis on. */
  #circle({ from, centre, axis, radius, sweep }: ArcEdge): Reference {
    const z = sweep > 0 ? axis : scale(axis, -1);
    const place = this.#file.placement({ origin: centre, z, x: squareTo(z, subtract(from, centre)) });
    return this.#file.add(`CIRCLE('',${place},${formatReal(radius)})`);
  }
}

/** Direction of the bulge of an arc: of its start, seen from its axis; two arcs between the same ends differ in it. */
function bulgeOf(edge: Edge): string {
  if (edge.kind === "line") return "line";
  const along = scale(cross(edge.axis, subtract(edge.from, edge.centre)), Math.sign(edge.sweep) / edge.radius);
  return along.map((c) => Math.round(c * 1e3) + 0).join(",");
}
