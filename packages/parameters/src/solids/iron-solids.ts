// Iron, cap iron and screw's head in their place: bought, not made, so they are for pictures and never in a pack.

import { circleOutline, cosDeg, type Outline, point, sinDeg } from "@lamplane/geometry";
import { type Face, mapFaces } from "@lamplane/geometry/mesh";
import type { Elevation } from "../elevation/elevation.ts";
import { bedToPlane } from "../elevation/frame.ts";
import { capIronOutline, screwHeadOutline } from "../elevation/iron-parts.ts";
import { plainShape, prism } from "./part-faces.ts";

/** A bought part: its name and its faces in the plane's frame. */
export interface BoughtPart {
  readonly name: "iron" | "cap-iron" | "cap-screw";
  readonly faces: readonly Face[];
}

/** Iron, cap iron and the screw's head, as far as the design has them. */
export function ironSolids({ design, frame, iron }: Elevation): BoughtPart[] {
  const half = design.iron.width / 2;
  const plate = (name: BoughtPart["name"], outline: Outline | undefined): BoughtPart[] =>
    outline ? [{ name, faces: prism(plainShape(outline), -half, half).faces }] : [];
  const head = screwHeadOutline(design, frame) ? [{ name: "cap-screw" as const, faces: screwHead() }] : [];
  return [...plate("iron", iron), ...plate("cap-iron", capIronOutline(design, frame)), ...head];

  /** A disc behind the iron, its axis square to the bed. */
  function screwHead(): Face[] {
    const { diameter, height, fromEdge } = design.capIron.screwHead;
    const back = -frame.thickness;
    const disc = prism(
      plainShape(circleOutline({ centre: point(fromEdge, 0), radius: diameter / 2 })),
      back - height,
      back,
    );
    const [c, k] = [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle)];
    return mapFaces(disc.faces, {
      point: ([s, z, v]) => {
        const p = bedToPlane(frame, s, v);
        return [p.x, p.y, -z];
      },
      direction: ([s, z, v]) => [s * c - v * k, s * k + v * c, -z],
    });
  }
}
