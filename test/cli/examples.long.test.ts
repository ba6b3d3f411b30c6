// Every example at every stage: programs nobody here wrote find nothing to mend in its files.
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, parse } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { IS_FULL, sampled } from "../support/extent.ts";
import { requireProgram, runForOutput, runForStdout } from "../support/outside-programs.ts";
import { readContents } from "../support/packs.ts";
import { runCommand } from "../support/running.ts";
import { LIB3MF_REPORT } from "../support/three-mf.ts";

const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
const STAGES = sampled(["dry-fit", "glue-up", "shaping"], 2);
const folder = mkdtempSync(join(tmpdir(), "lamplane-examples-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Errors, fixes, unit, whether every outline to be cut is one closed polyline, layers and kinds; a line a file. */
const AUDIT = `
import sys
from ezdxf import recover
for path in sys.argv[1:]:
    doc, audit = recover.readfile(path)
    space = doc.modelspace()
    cut = space.query('*[layer=="CUT"]')
    closed = len(cut) > 0 and all(e.dxftype() == 'LWPOLYLINE' and e.closed for e in cut)
    drilled = all(e.dxftype() == 'CIRCLE' for e in space.query('*[layer=="DRILL"]'))
    layers = ','.join(sorted({e.dxf.layer for e in space}))
    print(len(audit.errors), len(audit.fixes), doc.header['$INSUNITS'], closed, drilled, layers)
`;

const FAULTS = [
  "Total disconnected facets",
  "Degenerate facets",
  "Edges fixed",
  "Facets removed",
  "Facets added",
  "Facets reversed",
  "Backwards edges",
];

/** Slicing takes long: these two stand for a straight ramp and a curved one. */
const SLICED: readonly string[] = ["apprentice-smoother.yaml", "figured-finisher.yaml"];
/** No cap iron: no recess for its screw, and no template to rout one. */
const SINGLE_IRONS: readonly string[] = ["tapered-panel.yaml"];
/** A core in layers: eight of them in place of two blocks, and a recess that needs no template. */
const LAYERED: readonly string[] = ["layered-smoother.yaml"];
/** Coarse layers without filling are sliced fast, and a faulty solid shows in them as well. */
const COARSE = ["center=100,100", "layer-height=0.6", "nozzle-diameter=0.8", "fill-density=0%", "perimeters=1"];
const SLICE = ["--export-gcode", ...COARSE.flatMap((setting) => `--${setting}`.split("="))];
/** What the slicer says of a solid that it had to mend, or could not use. */
const MENDED = /repair|open edges|not manifold|manifold = no|error|empty|warning/i;

describe.each(EXAMPLES)("%s", (example) => {
  const jigs = SINGLE_IRONS.includes(example) || LAYERED.includes(example) ? 7 : 8;
  const [parts, files] = LAYERED.includes(example) ? [10, 12] : [6, 6]; // the blocks in one piece have files too
  const packs = new Map<string, ReturnType<typeof build>>();
  /** The pack of a stage, built once. */
  const built = (stage: string) => {
    const pack = packs.get(stage) ?? build(stage);
    packs.set(stage, pack);
    return pack;
  };
  const build = async (stage: string) => {
    const out = join(folder, stage);
    const sections = stage === STAGES[0] || IS_FULL ? [] : ["--only", "parts"]; // the rest is read at the first stage alone
    const args = ["--out", out, "--with", `stage=${stage}`, ...sections];
    const run = await runCommand("build", join("examples", example), ...args);
    expect(run.exit, run.err).toBe(0);
    expect(run.err).toMatch(/^$|^\d+ warnings?: /);
    const pack = join(out, example.replace(".yaml", ""));
    const within = (folder: string) => readdirSync(join(pack, folder)).map((name) => join(pack, folder, name));
    const ending = (end: string, folder = "parts") => within(folder).filter((name) => name.endsWith(end));
    return { pack, ending };
  };

  test.for(STAGES)("admesh mends nothing, lib3mf finds every part closed at stage %s", async (stage, context) => {
    const { pack, ending } = await built(stage);
    const { warnings, objects } = JSON.parse(
      runForStdout(requireProgram(context, "lib3mf"), ["-c", LIB3MF_REPORT, join(pack, "body.3mf")]),
    );
    expect(warnings).toBe(0);
    expect(objects).toHaveLength(parts + 1); // and the whole
    for (const { name, mesh, valid, closed } of objects)
      expect({ name, valid, closed }).toEqual({ name, valid: true, closed: mesh || null });
    const stls = [join(pack, "body.stl"), ...ending(".stl")];
    expect(stls).toHaveLength(files + 1);
    for (const stl of stls) {
      const report = runForStdout(requireProgram(context, "admesh"), [stl]);
      for (const fault of FAULTS) expect(report, `${stl}: ${fault}`).toMatch(new RegExp(`${fault}\\s*:\\s*0\\b`));
      expect(report, stl).toMatch(/Number of parts\s*:\s*1\b/);
    }
  });

  test("the same bytes a second time", async () => {
    const first = readContents((await built("dry-fit")).pack);
    rmSync(join(folder, "dry-fit", example.replace(".yaml", "")), { recursive: true });
    expect(readContents((await build("dry-fit")).pack)).toEqual(first);
  });

  test.for(STAGES)("ezdxf finds no error and nothing to fix at stage %s", async (stage, context) => {
    const { ending } = await built(stage);
    const lines = runForStdout(requireProgram(context, "ezdxf"), ["-c", AUDIT, ...ending(".dxf")])
      .trim()
      .split("\n");
    expect(lines).toHaveLength(files);
    for (const found of lines) expect(found).toMatch(/^0 0 4 True True /);
    if (!SINGLE_IRONS.includes(example) && !LAYERED.includes(example)) expect(lines.join("\n")).toMatch(/ROUT/);
  });

  test("admesh mends no jig, and ezdxf no drawing of one", async (context) => {
    const { ending } = await built("dry-fit");
    const stls = ending(".stl", "jigs");
    expect(stls).toHaveLength(jigs);
    for (const stl of stls) {
      const report = runForStdout(requireProgram(context, "admesh"), [stl]);
      for (const fault of FAULTS) expect(report, `${stl}: ${fault}`).toMatch(new RegExp(`${fault}\\s*:\\s*0\\b`));
      expect(report, stl).toMatch(/Number of parts\s*:\s*1\b/);
    }
    const lines = runForStdout(requireProgram(context, "ezdxf"), ["-c", AUDIT, ...ending(".dxf", "jigs")])
      .trim()
      .split("\n");
    expect(lines).toHaveLength(jigs - 1);
    for (const found of lines) expect(found).toMatch(/^0 0 4 True True /);
  });

  test("a slicer takes each jig as one sound solid", async (context) => {
    const slicer = requireProgram(context, "prusa-slicer");
    const { ending } = await built("dry-fit");
    const report = runForStdout(slicer, ["--info", ...ending(".stl", "jigs")]);
    expect(report.match(/manifold = yes/g)).toHaveLength(jigs);
    expect(report.match(/number_of_parts =\s+1\b/g)).toHaveLength(jigs);
    expect(report).not.toMatch(MENDED);
    const onPlates = runForStdout(slicer, ["--info", ...ending(".3mf", "jigs")]);
    expect(onPlates.match(/manifold = yes/g)).toHaveLength(jigs);
    expect(onPlates).not.toMatch(MENDED);
    if (!SLICED.includes(example)) return;
    const sliced = join(folder, "sliced", example);
    mkdirSync(sliced, { recursive: true });
    const stls = ending(".stl", "jigs");
    expect(runForOutput(slicer, [...SLICE, "--output", sliced, ...stls])).not.toMatch(MENDED);
    for (const stl of stls)
      expect(readFileSync(join(sliced, `${parse(stl).name}.gcode`), "utf8"), stl).toMatch(/^G1 .*E\d/m);
  });
});
