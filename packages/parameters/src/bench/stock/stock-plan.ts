// Everything about a plane's wood before the first cut, from its elevation: one pure function, every figure read off it once.
import type { Elevation } from "../../elevation/elevation.ts";
import { type BilletFit, billetFit } from "./billet.ts";
import { type CoreSawing, coreSawing } from "./core-sawing.ts";
import { type MarkPlan, markPlan } from "./marks.ts";
import { type StockList, stockList } from "./pieces.ts";
import { type RipLayout, ripLayout } from "./rip-layout.ts";
import { type ThroatOffcut, throatOffcut } from "./throat-offcut.ts";

export interface StockPlan {
  readonly billet: BilletFit;
  readonly rip: RipLayout;
  readonly core: CoreSawing;
  readonly marks: MarkPlan;
  readonly offcut: ThroatOffcut;
  readonly list: StockList;
}

/** Where the matching marks go on a plane's pieces. */
export const marksOf = (plane: Elevation): MarkPlan =>
  markPlan(plane, coreSawing(plane), ripLayout(plane, billetFit(plane).lies.width));

/** How to cut a plane's wood. Also for a billet that is too small: then everything is as needed. */
export function stockPlan(plane: Elevation): StockPlan {
  const billet = billetFit(plane);
  const rip = ripLayout(plane, billet.lies.width);
  const core = coreSawing(plane);
  const offcut = throatOffcut(plane, core);
  return { billet, rip, core, marks: markPlan(plane, core, rip), offcut, list: stockList(plane, billet, core, offcut) };
}
