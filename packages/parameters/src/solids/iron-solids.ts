// Iron, cap iron and screw's head in their place: bought, not made, so they are for pictures and never in a pack.

import { circleOutline, type Outline, point } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { ironToPlane } from "../elevation/frame.ts";
import { capIronOutline, screwHeadOutline } from "../elevation/iron-parts.ts";
import type { Triangle, Vec3 } from "./faces.ts";
import { plainShape, prism } from "./prism.ts";

/** A bought part: its name and its faces in the plane's frame. */
export interface BoughtPart {
  readonly name: "iron" | "cap-iron" | "cap-screw";
  readonly triangles: readonly Triangle[];
}

/** Iron, cap iron and the screw's head, as far as the design has them. */
export function ironSolids({ design, frame, iron }: Elevation): BoughtPart[] {
  const half = design.iron.width / 2;
  const plate = (name: BoughtPart["name"], outline: Outline | undefined): BoughtPart[] =>
    outline ? [{ name, triangles: prism(plainShape(outline), -half, half).triangles }] : [];
  const head = screwHeadOutline(design, frame) ? [{ name: "cap-screw" as const, triangles: screwHead() }] : [];
  return [...plate("iron", iron), ...plate("cap-iron", capIronOutline(design, frame)), ...head];

  /** A disc behind the iron, its axis square to the bed. */
  function screwHead(): Triangle[] {
    const { diameter, height, fromEdge } = design.capIron.screwHead;
    const back = -design.iron.thickness;
    const disc = prism(
      plainShape(circleOutline({ centre: point(fromEdge, 0), radius: diameter / 2 })),
      back - height,
      back,
    );
    const placed = ([s, z, v]: Vec3): Vec3 => {
      const p = ironToPlane(frame, s, v);
      return [p.x, p.y, -z];
    };
    return disc.triangles.map(([a, b, c]) => [placed(a), placed(b), placed(c)]);
  }
}
