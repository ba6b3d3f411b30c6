// `lamplane sweep`: many designs at once, as a table; a run that was broken off goes on where it stopped.
import { createHash } from "node:crypto";
import {
  closeSync,
  existsSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { figuresAsBuilt } from "@lamplane/bench";
import { toWriteError, WriteError } from "@lamplane/export/write-error";
import { nearNames } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { assignPlotRoles } from "../sweep/plots.ts";
import { headerLine, type Sweep, sweepLinePrefix } from "../sweep/rows.ts";
import { runSweep } from "../sweep/run.ts";
import { countDesigns } from "../sweep/variation.ts";
import { parseVariations } from "../sweep/variations.ts";
import { VERSION } from "../version.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { SWEEP } from "../words/reports.ts";

/** Figures that a sweep shows by default. */
const DEFAULT_FIGURES = [
  "mouthGrowth",
  "glueGap",
  "unsupported",
  "throatNarrowing",
  "pinToRamp",
  "shearOut",
  "wedgeAtPin",
];

export interface SweepOptions {
  readonly vary: readonly string[];
  readonly figures: readonly string[];
  /** File that the table goes to; standard output without it. */
  readonly out: string | undefined;
  /** Folder that the plots go into; none are drawn without it. */
  readonly plots: string | undefined;
}

export async function sweepCommand(io: Io, design: Design, { vary, figures, out, plots }: SweepOptions): Promise<Exit> {
  if (vary.length === 0) throw new InputRefused(SWEEP.noVary);
  const asked: Sweep = { design, variations: parseVariations(vary, design), figures: parseFigureKeys(figures, design) };
  const count = countDesigns(asked.variations);
  if (plots !== undefined) await preparePlots(asked, plots);
  const table = out === undefined ? await sweepToOutput(io, asked, count) : await sweepToFile(io, asked, count, out);
  if (plots === undefined) return EXIT.done;
  const { writePlots } = await import("../sweep/plot-files.ts");
  const drawn = writePlots(asked, table(), plots);
  const summary = `${SWEEP.plots({ folder: plots, names: drawn })}\n`;
  if (out === undefined) io.err(summary);
  else io.out(summary);
  return EXIT.done;
}

/** Refuses before the work what cannot be drawn or written after it. */
async function preparePlots(asked: Sweep, folder: string): Promise<void> {
  assignPlotRoles(asked);
  const { makePlotFolder } = await import("../sweep/plot-files.ts");
  await makePlotFolder(folder);
}

/** The table as it was printed. */
async function sweepToOutput(io: Io, asked: Sweep, count: number): Promise<() => string> {
  const parts = [headerLine(asked)];
  io.out(parts[0]!);
  await runSweep(asked, 0, count, (lines) => {
    parts.push(lines);
    io.out(lines);
  });
  return () => parts.join("");
}

function parseFigureKeys(given: readonly string[], design: Design): readonly string[] {
  if (given.length === 0) return DEFAULT_FIGURES;
  const known = figuresAsBuilt(design).map(({ key }) => key);
  const unknown = given.find((key) => !known.includes(key));
  if (unknown === undefined) return given;
  throw new InputRefused(ARGUMENT_FAULT.unknownFigure({ name: unknown, near: nearNames(unknown, known) }));
}

/** Writes beside the target, under a name that only the same sweep has, and renames when whole. Gives the table as written. */
async function sweepToFile(io: Io, asked: Sweep, count: number, out: string): Promise<() => string> {
  const part = join(dirname(out), `.${basename(out)}.${fingerprint(asked)}.part`);
  try {
    refuseForeignFile(out);
    const first = restorePart(part, asked, count);
    const file = openSync(part, "a");
    try {
      await runSweep(asked, first, count, (lines, done) => {
        writeAll(file, lines);
        if (io.showsProgress) io.err(done === count ? "\r\u001b[K" : `\r\u001b[K${SWEEP.progress({ done, count })}`);
      });
    } finally {
      closeSync(file);
    }
    if (readCompleteLines(part, asked, count).length < count) throw concurrentWriteError(out);
    renameSync(part, out);
    io.out(`${SWEEP.written({ file: out, count, restored: first })}\n`);
    return () => readFileSync(out, "utf8");
  } catch (error) {
    throw toWriteError(out, error);
  }
}

/** Two runs of one sweep that write to one file spoil each other's lines, and are refused; what was sound is kept. */
const concurrentWriteError = (out: string) => new WriteError(out, SWEEP.twoRuns, SWEEP.twoRunsRemedy);

const fingerprint = (asked: Sweep): string =>
  createHash("sha256")
    .update(JSON.stringify([VERSION, asked]))
    .digest("hex")
    .slice(0, 12);

/** An older table is replaced; anything else is left as it is. */
function refuseForeignFile(out: string): void {
  if (!existsSync(out)) return;
  const isTable = statSync(out).isFile() && /(^|,)stops,warnings\r\n/.test(readFileSync(out, "utf8").slice(0, 4096));
  if (!isTable) throw new WriteError(out, SWEEP.noTable, SWEEP.noTableRemedy);
}

/** Lines of this sweep that stand whole in a part file, from its beginning; what follows the first that is none is no one's. */
function readCompleteLines(part: string, asked: Sweep, count: number): string[] {
  const header = headerLine(asked);
  const text = existsSync(part) ? readFileSync(part, "utf8") : "";
  const lines = text.startsWith(header) ? text.slice(header.length).split("\r\n").slice(0, -1) : [];
  const spoiled = lines.findIndex((line, i) => i >= count || !line.startsWith(sweepLinePrefix(asked, i)));
  return spoiled < 0 ? lines : lines.slice(0, spoiled);
}

/** Begins the part with the lines that a broken-off run left. It is a file anew: another run that still writes does not write here. */
function restorePart(part: string, asked: Sweep, count: number): number {
  const kept = readCompleteLines(part, asked, count);
  try {
    writeFileSync(`${part}~`, headerLine(asked) + kept.map((line) => `${line}\r\n`).join(""));
    renameSync(`${part}~`, part);
  } catch (error) {
    rmSync(`${part}~`, { force: true });
    throw error;
  }
  return kept.length;
}

/** All of a text: a disk that fills up takes the beginning of it without a complaint, and complains at the next. */
function writeAll(file: number, text: string): void {
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
}
