// Everything about a plane's wood before the first cut, from its elevation: one pure function, every figure read off it once.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { asBuiltPlane, planeBeforeStep } from "../history/as-built.ts";
import { type BilletFit, billetFit } from "./billet.ts";
import { type CoreSawing, coreSawing } from "./core-sawing.ts";
import { type LayerStock, layerStock } from "./layer-strips.ts";
import { type MarkPlan, planMarks } from "./marks.ts";
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
  /** The strips of a layered core, in place of billet and rip layout; undefined for one in one piece. */
  readonly layers: LayerStock | undefined;
}

/** Where the matching marks go on a plane's pieces. */
export const matchingMarks = (plane: Elevation): MarkPlan =>
  planMarks(plane, coreSawing(plane), ripLayout(plane, billetFit(plane).lies.width));

/**
 * How to cut a plane's wood. Also for a billet that is too small: then everything is as needed.
 * @param before the plane as it stood when billet and core were to be sawn; itself, where nothing is cut yet
 */
export function stockPlan(plane: Elevation, before = { billet: plane, core: plane }): StockPlan {
  const billet = billetFit(before.billet);
  const rip = ripLayout(before.billet, billet.lies.width);
  const core = coreSawing(before.core);
  const offcut = throatOffcut(plane, core);
  const list = stockList(plane, before, billet, core, offcut);
  return {
    billet,
    rip,
    core,
    marks: planMarks(before.core, core, rip),
    offcut,
    list,
    layers: layerStock(before.billet),
  };
}

/** The same for a plane under way: a cut keeps the numbers that it was to be made by; wedge and pin follow what was measured. */
export const asBuiltStockPlan = (design: Design): StockPlan =>
  stockPlan(asBuiltPlane(design), { billet: planeBeforeStep(design, "core"), core: planeBeforeStep(design, "cuts") });
