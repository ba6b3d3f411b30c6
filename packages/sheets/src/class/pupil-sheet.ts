// One pupil's page as plain data: what the plane's card has on its first page.
import type { Design } from "@lamplane/parameters/table";
import { sectionPicture } from "../traveller/draw/section.ts";
import { keyFigures } from "../traveller/front-matter.ts";
import type { Traveller } from "../traveller/index.ts";
import { setUps } from "../traveller/set-ups.ts";
import { stepContext } from "../traveller/step-context.ts";

export type PupilSheet = Pick<Traveller, "name" | "section" | "keyFigures" | "setUps">;

export function pupilSheet(design: Design): PupilSheet {
  const t = stepContext(design, "shaping");
  return {
    name: design.name,
    section: (room) => sectionPicture(t, room),
    keyFigures: keyFigures(t),
    setUps: setUps(design),
  };
}
