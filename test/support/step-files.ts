// The STEP files of a plane with what each is to hold: parts, plane, jigs and body.
import { assemblyStep, partStep } from "@lamplane/export";
import { facesVolume } from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { bodyFaces, partsOf, planeJigs } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { outlineVolumes } from "./outline-volumes.ts";

export const PART_NAMES = ["front-block", "bed-block", "cheek-left", "cheek-right", "wedge", "cross-pin"];

/** Settings of jigs that random designs take in turn. */
export const JIG_SETTINGS = [
  {},
  { fence: "slotted" },
  { bush: 20, cutterLength: 25 },
  { relief: 2, drillBush: 15 },
] as const;

/** Files of a plane by name, with the volumes of the solids in them: of parts by their outlines, of jigs by their exact faces. */
export function stepFiles(design: Design): Map<string, { text: string; volumes: number[] }> {
  const plane = elevation(design);
  const parts = partsOf(plane, "blank");
  const byOutline = outlineVolumes(plane, "blank");
  const files = new Map<string, { text: string; volumes: number[] }>();
  for (const { name, lyingFaces } of parts)
    files.set(name, { text: partStep({ name, shells: [lyingFaces] }, "0"), volumes: [byOutline.get(name)!] });
  const posed = parts.map(({ name, lyingFaces, pose }) => ({ name, shells: [lyingFaces], pose }));
  files.set("plane", {
    text: assemblyStep("worked", posed, "0"),
    volumes: PART_NAMES.map((name) => byOutline.get(name)!),
  });
  for (const { name, plainFaces } of planeJigs(plane))
    files.set(name, { text: partStep({ name, shells: plainFaces }, "0"), volumes: plainFaces.map(facesVolume) });
  const body = bodyFaces(plane, "trued");
  files.set("body", { text: partStep({ name: "body", shells: [body] }, "0"), volumes: [facesVolume(body)] });
  return files;
}
