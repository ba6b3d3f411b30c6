// What `new` asks and says.
import { sentence } from "@lamplane/parameters/words";

export const NEW = {
  shop: sentence(
    ({ file }: { file: string }) => `Wrote ${file}. Name it in a design, \`shop: ${file}\`, or enter --shop ${file}.`,
    { file: "my-shop.yaml" },
  ),
  written: sentence(
    ({ file, isMeasured }: { file: string; isMeasured: boolean }) =>
      `Wrote ${file}.${isMeasured ? "" : ` Correct the lines marked "Measure" by your iron and billet, then run \`lamplane check ${file}\`.`}`,
    { file: "my-plane.yaml", isMeasured: false },
    { file: "my-plane.yaml", isMeasured: true },
  ),
  verdict: "As it stands:",
  purpose: "What is the plane for?",
  units: "Which unit do you work in?",
  unitsApart: "enter --units",
  mm: "millimetres",
  in: "inches",
  hasCapIron: "Is a cap iron screwed on the iron?",
  hasBillet: "Do you have the billet already?",
  limits: sentence(
    ({ read, min, max }: { read: string; min: string; max: string }) => `read ${read}; allowed: ${min} to ${max}`,
    { read: "150 mm", min: "8 mm", max: "120 mm" },
  ),
} as const;

/** What is asked for each value that a maker measures. */
export const NEW_QUESTION = {
  "iron.width": "How wide is your iron at its cutting edge?",
  "iron.thickness": "How thick is it where it lies on the bed?",
  "iron.length": "How long is it, edge to top?",
  "capIron.thickness": "How thick is the cap iron where the wedge bears on it?",
  "capIron.screwHead.diameter": "How wide is the screw head behind the iron? 0: none",
  "capIron.screwHead.height": "How far does the head stand out behind the iron?",
  "capIron.screwHead.fromEdge": "How far is the middle of the head from the cutting edge?",
  "billet.length": "How long is the billet?",
  "billet.width": "How wide is it?",
  "billet.height": "How high is it?",
} as const;
