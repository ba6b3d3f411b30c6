// STEP files of random designs, parts and jigs alike, before the judge that is written from ISO 10303 alone; 200 of them in `pnpm test:full`.
import { expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { randomDesigns } from "../support/designs.ts";
import { extent } from "../support/extent.ts";
import { stepFaults } from "../support/step-faults.ts";
import { JIG_SETTINGS } from "../support/step-files.ts";

const DESIGNS = extent(60, 200);

test(`${DESIGNS} random designs: closed solids of the outlines' volume, area and place`, { timeout: 3_600_000 }, () => {
  const found = randomDesigns(83, DESIGNS, isBuildable).flatMap(({ changes, design }, i) => {
    const jigs = { ...design.jigs, ...JIG_SETTINGS[i % JIG_SETTINGS.length]! };
    const faults = stepFaults({ ...design, jigs });
    return faults.length === 0 ? [] : [{ changes, jigs, faults }];
  });
  expect(found).toEqual([]);
});
