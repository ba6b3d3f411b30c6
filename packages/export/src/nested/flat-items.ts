// What of a plane is cut from sheet: cheeks, core layers and flat jigs, each as its own drawing says.
import type { Circle, Outline } from "@lamplane/geometry";
import { cheekDrawing, type Drawing, layerDrawing } from "@lamplane/parameters/drawings";
import { type Elevation, layerShapes } from "@lamplane/parameters/elevation";
import { type JigName, jigPlans, type PlateRange } from "@lamplane/parameters/jigs";
import { planeJigs } from "@lamplane/parameters/solids";
import { WORK_AFTER } from "@lamplane/parameters/table";

/** A flat thing to be laid on a sheet. */
export interface FlatItem {
  /** As its own files are called; of a jig in several plates, with its number. */
  readonly name: string;
  readonly material: "wood" | "ply";
  /** Thickness of the sheet that it is cut from, mm; undefined for a jig that none of the shop's plates serves. */
  readonly thickness: number | undefined;
  readonly plateRange?: PlateRange;
  /** Of a jig: which one it is, or is a plate of. */
  readonly jig?: JigName;
  readonly drawing: Drawing;
}

/** Cheeks and layers as far as the plane is built. */
export function flatParts(plane: Elevation): FlatItem[] {
  const stage = WORK_AFTER[plane.design.stage].drawn;
  const cheeks = (["left", "right"] as const).map((hand) => cheekDrawing(plane, stage, hand));
  const layers = layerShapes(plane, stage).map((layer) => layerDrawing(plane, stage, layer));
  return [...cheeks, ...layers].map((drawing) => ({
    name: drawing.title,
    material: "wood",
    thickness: drawing.thickness,
    drawing,
  }));
}

/** Jigs that can be cut from sheet, one item a plate. */
export function flatJigs(plane: Elevation): FlatItem[] {
  const plans = new Map(jigPlans(plane).map((plan) => [plan.name, plan]));
  return planeJigs(plane, ({ drawing }) => drawing !== undefined).flatMap(({ name, drawing }): FlatItem[] => {
    const { plate, plateRange } = plans.get(name)!;
    if (!drawing || !plateRange) return [];
    const layers = plate?.layers ?? 1;
    return Array.from({ length: layers }, (_, i) => ({
      name: layers === 1 ? name : `${name}-${i + 1}`,
      material: "ply",
      thickness: plate?.thickness,
      plateRange,
      jig: name,
      drawing,
    }));
  });
}

/** Outlines that are cut through, and round holes. */
export function cutOf({ entries }: Drawing): { outlines: Outline[]; circles: Circle[] } {
  return {
    outlines: entries.flatMap((entry) => (entry.kind === "outline" && entry.work === "CUT" ? [entry.outline] : [])),
    circles: entries.flatMap((entry) =>
      entry.kind === "circle" && entry.work === "DRILL" && entry.depth === undefined ? [entry.circle] : [],
    ),
  };
}
