// Notes on the drawings of parts.
import { sentence } from "./sentence.ts";

export const DRAWING_NOTE = {
  pegs: sentence(
    ({ diameter }: { diameter: string }) => `pegs ${diameter}: bore at the dry fit, through cheeks and block together`,
    { diameter: "6 mm" },
  ),
  wide: sentence(({ part, width }: { part: string; width: string }) => `${part}, ${width} wide`, {
    part: "front block",
    width: "49.6 mm",
  }),
  curvedRamp: sentence(({ radius }: { radius: string }) => `saw along the mark, then shape R ${radius}`, {
    radius: "120 mm",
  }),
  rout: sentence(({ depth }: { depth: string }) => `ROUT ${depth} deep, square to the bed`, { depth: "5.6 mm" }),
  cheek: sentence(
    ({ hand, toe, thickness }: Record<"hand" | "toe", "left" | "right"> & { thickness: string }) =>
      `${hand} cheek, inside up, toe to the ${toe}, ${thickness} thick`,
    { hand: "left", toe: "right", thickness: "8 mm" },
  ),
  layer: sentence(
    ({ block, number, count, thickness }: Record<"block" | "thickness", string> & Record<"number" | "count", number>) =>
      `${block} block, layer ${number} of ${count} from the right, ${thickness} thick`,
    { block: "front", number: 1, count: 3, thickness: "16.5 mm" },
  ),
  layerPegs: sentence(({ diameter }: { diameter: string }) => `drill ${diameter} through, all layers alike`, {
    diameter: "6 mm",
  }),
  bedAllowance: sentence(
    ({ allowance }: { allowance: string }) => `${allowance} left on the bed: true it to the mark once glued`,
    { allowance: "0.5 mm" },
  ),
  wedge: sentence(({ width }: { width: string }) => `wedge, ${width} wide, grain along it`, { width: "48 mm" }),
  crossPin: sentence(
    ({ diameter, tenon }: Record<"diameter" | "tenon", string>) => `cross pin ${diameter}, tenons ${tenon}`,
    { diameter: "12.7 mm", tenon: "9.5 mm" },
  ),
} as const;
