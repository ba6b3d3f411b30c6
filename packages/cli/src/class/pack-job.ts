// One plane's pack, made where it is not current: what a worker of a class does, or this thread where there is none.
import { asBuiltPlane } from "@lamplane/bench";
import { checkWithoutCures, findingSentence, mayBeBuilt } from "@lamplane/bench/checks";
import { isCurrentPack, preparePack, WriteError, writePack } from "@lamplane/export";
import { designState, makePackContent, SECTIONS } from "@lamplane/export/content";
import type { Design } from "@lamplane/parameters/table";
import { VERSION } from "../version.ts";

export type PackOutcome =
  | { readonly kind: "made"; readonly files: number }
  /** It stood there whole, made from the design as it is. */
  | { readonly kind: "current" }
  /** Checks that fail, in sentences. */
  | { readonly kind: "stopped"; readonly stops: readonly string[] }
  | { readonly kind: "not-written"; readonly message: string };

export async function makePlanePack(design: Design, parent: string): Promise<PackOutcome> {
  const { name } = design;
  const whole = { parent, name, state: designState(design), version: VERSION, sections: SECTIONS };
  if (await isCurrentPack(whole)) return { kind: "current" };
  const plane = asBuiltPlane(design);
  const findings = checkWithoutCures(plane);
  if (!mayBeBuilt(findings)) {
    const stops = findings.filter(({ severity }) => severity === "stop");
    return { kind: "stopped", stops: stops.map((finding) => findingSentence(design, finding)) };
  }
  try {
    await preparePack({ parent, name });
    const files = await makePackContent({ design, plane, findings, version: VERSION });
    await writePack({ parent, name, files });
    return { kind: "made", files: files.size };
  } catch (error) {
    if (error instanceof WriteError) return { kind: "not-written", message: error.message };
    throw error;
  }
}
