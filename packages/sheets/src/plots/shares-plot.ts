// Which step decides a figure.
import type { Picture } from "../picture/picture.ts";
import { barPicture, type ShareRow } from "./bars.ts";

export interface SharesPlotOptions {
  /** Kebab-case name of the picture. */
  readonly name: string;
  readonly title: string;
  /** What the shares are of, along the axis. */
  readonly axis: string;
  /** Of the picture, mm. */
  readonly width?: number;
}

/** Which input decides a figure: bars in the order given. */
export const sharesPlot = (rows: readonly ShareRow[], options: SharesPlotOptions): Picture =>
  barPicture({ ...options, rows });
