// Words of the findings that are no single number against a limit, and of how a value stands.
import { listText, sentence } from "@lamplane/parameters/words";

/** How a value stands that lies within its limit. */
export const PASSED = "ok";

/** How a value stands that leaves a jig out. */
export const NO_JIG = sentence(({ jig }: { jig: string }) => `no ${jig} is made`, { jig: "recess template" });

/** A strength beside what it must bear. */
export const TIMES_LOAD = sentence(({ times }: { times: string }) => `${times} load`, { times: "1.35×" });

interface UnknownWood {
  readonly nearest: readonly string[];
  readonly parts: readonly string[];
}

/** By a finding's subject. */
export const NOTES = {
  "printed-size": {
    name: sentence(({ jig }: { jig: string }) => `Print size of ${jig}`, { jig: "bed gauge" }),
    verdict: "too large for the printer",
  },
  "wood-in-tables": {
    name: sentence(({ wood }: { wood: string }) => `Wood "${wood}"`, { wood: "beach, american" }),
    verdict: "not in the wood tables",
    advice: sentence(
      ({ nearest, parts }: UnknownWood) =>
        `${nearest.length === 0 ? "" : `Nearest: ${nearest.join("; ")}. `}Strength and seasons of ${listText(parts)} are not judged.`,
      { nearest: ["Beech, American", "Birch, sweet"], parts: ["body", "cross pin", "wedge"] },
      { nearest: [], parts: ["cross pin"] },
    ),
  },
  "wood-by-trade-name": {
    name: sentence(({ wood }: { wood: string }) => `Wood "${wood}"`, { wood: "hard maple" }),
    verdict: sentence(({ row }: { row: string }) => `read as "${row}"`, { row: "Maple, sugar" }),
    advice: sentence(
      ({ parts }: { parts: readonly string[] }) =>
        `A trade name; ${listText(parts)} ${parts.length === 1 ? "is" : "are"} judged by this row of the tables.`,
      { parts: ["body"] },
    ),
  },
  "wood-properties": {
    name: sentence(({ wood }: { wood: string }) => `Wood "${wood}"`, { wood: "Ipe" }),
    verdict: sentence(({ missing }: { missing: readonly string[] }) => `the tables give no ${missing.join(", no ")}`, {
      missing: ["modulus of elasticity", "shrinkage"],
    }),
    advice: sentence(
      ({ parts }: { parts: readonly string[] }) => `Checks that need it are left out for ${listText(parts)}.`,
      { parts: ["cross pin"] },
    ),
  },
  "rings-of-layers": {
    name: "Rings of the layers",
    verdict: "not those of a flat-sawn board",
    advice: sentence(
      ({ rings, inBoard }: { rings: string; inBoard: string }) =>
        `A layer ripped from a flat-sawn board and stood on edge is quarter sawn at the sole. For ${rings} rip it from a board whose rings stand at ${inBoard} to its face; else enter wood.rings 90.`,
      { rings: "20°", inBoard: "70°" },
    ),
  },
  "cup-of-year": {
    name: "Cup of sole or bed over the year",
    verdict: "large enough to feel",
    advice: sentence(
      ({ distance }: { distance: string }) =>
        `True the sole in the season of use, or choose wood nearer quarter sawn. Ring centre assumed ${distance} away.`,
      { distance: "100 mm" },
    ),
  },
  "moisture-of-year": {
    name: "Wood moisture over the year",
    verdict: "outside the published equation",
    advice: "Take the season figures as a guide only.",
  },
} as const;

/** What a note is about, by its code. */
export const NOTE_HELP = {
  "wood-name": "Whether the wood tables hold each wood by the name entered.",
  "wood-trade-name": "A wood entered by its trade name, and the row of the tables that serves for it.",
  "wood-properties": "Properties that the tables do not give for a wood; what depends on them is not judged.",
  "moisture-range": "Whether the moisture of the wood stays in the range for which its movement is published.",
  "sole-cup": "Cup of sole and bed over the year, where it is felt in use.",
} as const;

/** The same of the judgements of a jig. */
export const JIG_HELP = {
  printSize: sentence(({ jig }: { jig: string }) => `Whether the printer holds the ${jig}.`, { jig: "bed gauge" }),
  omitted: sentence(({ jig }: { jig: string }) => `Why no ${jig} is made for a plane.`, { jig: "throat spacer" }),
} as const;

/** Names of wood properties and of parts. */
export const DISPLAY_NAMES = {
  specificGravity: "specific gravity",
  bending: "modulus of rupture",
  elasticity: "modulus of elasticity",
  compressionAlong: "compression along the grain",
  compressionAcross: "compression across the grain",
  shearAlong: "shear along the grain",
  hardness: "hardness",
  movement: "shrinkage",
  body: "body",
  pin: "cross pin",
  wedge: "wedge",
} as const;
