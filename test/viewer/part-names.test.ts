// Names of the parts on the elevation: what the wood is called at each step of the build.
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { STAGES } from "../../packages/viewer/src/protocol/build-steps.ts";
import { sheetPlane } from "../../packages/viewer/src/worker/sheet-plane.ts";
import { designWith, WORKED } from "../support/designs.ts";

test("a billet has no parts, what is ripped has a core, and from the cuts on there are two blocks, the front one to the left", () => {
  const design = designWith(WORKED);
  for (const stage of STAGES) {
    const [view] = sheetPlane(design, elevation(design), stage).views.filter(({ name }) => name === "elevation");
    const names = view!.labels.map(({ text }) => text);
    expect(names, stage).toEqual(
      stage === "billet" ? [] : stage === "ripped" ? ["core"] : ["front block", "bed block"],
    );
    const [front, bed] = view!.labels;
    if (bed) expect(front!.at.x, stage).toBeLessThan(bed.at.x);
  }
});
