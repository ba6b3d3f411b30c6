// Plots of a sweep on the disk: each written whole; an older plot of the same name is replaced, anything else is left alone.
import { existsSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import * as disk from "node:fs/promises";
import { join } from "node:path";
import { figuresAsBuilt } from "@lamplane/bench";
import { makeFolders } from "@lamplane/export";
import { toWriteError, WriteError } from "@lamplane/export/write-error";
import type { Picture } from "@lamplane/sheets";
import { pictureSvg } from "@lamplane/sheets";
import { SWEEP } from "../words/reports.ts";
import { type PlottedFigure, sweepPictures } from "./plots.ts";
import type { Sweep } from "./rows.ts";

/** Makes the folder that plots go into. @throws WriteError */
export async function makePlotFolder(folder: string): Promise<void> {
  try {
    await makeFolders(disk, folder);
  } catch (error) {
    throw toWriteError(folder, error);
  }
}

/** Draws a sweep's table into a folder that is there; gives the names of the files. @throws WriteError */
export function writePlots(sweep: Sweep, table: string, folder: string): string[] {
  const pictures = sweepPictures(sweep, table, describeFigures(sweep));
  for (const picture of pictures) refuseForeignFile(join(folder, fileNameOf(picture)), picture);
  return pictures.map((picture) => {
    writeAll(join(folder, fileNameOf(picture)), pictureSvg(picture));
    return fileNameOf(picture);
  });
}

const fileNameOf = ({ name }: Picture): string => `${name}.svg`;

/** What the figures are; one that the design itself lacks, as a recess's where there is none, is named by its key. */
function describeFigures({ design, figures }: Sweep): PlottedFigure[] {
  const known = new Map(figuresAsBuilt(design).map((figure) => [figure.key, figure]));
  return figures.map((key) => known.get(key) ?? { key, unit: "", help: key });
}

function refuseForeignFile(path: string, { name }: Picture): void {
  if (!existsSync(path)) return;
  if (statSync(path).isFile() && readFileSync(path, "utf8").slice(0, 1000).includes(`id="${name}-title"`)) return;
  throw new WriteError(path, SWEEP.noPlot, SWEEP.noPlotRemedy);
}

function writeAll(path: string, text: string): void {
  const beside = `${path}.${process.pid}.tmp`;
  try {
    writeFileSync(beside, text, { flag: "wx" });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw toWriteError(path, error);
  }
}
