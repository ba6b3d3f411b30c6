// What a design or a shop file holds several of, each an item of a list with a name of its own.
import type { ListRow, Row, ValueOf } from "../parameter.ts";
import { rowsOf, validateTable } from "../parameter.ts";
import { board, knot } from "./boards.ts";
import { cutter } from "./cutters.ts";
import { sheet } from "./sheets.ts";

export const LISTS = {
  cutters: {
    name: "cutters",
    help: "Cutters of the router, in the order of its tool numbers. None for no programs.",
    source: "maker's cutters",
    item: validateTable(cutter),
  },
  boards: {
    name: "boards",
    help: "Boards at hand that core and cheeks may be cut from. None: one billet.",
    source: "maker's boards",
    item: validateTable(board),
    within: { knots: { help: "What no part may hold: knots, shakes, worm holes.", item: validateTable(knot) } },
  },
  sheets: {
    name: "sheets",
    help: "Sheets that flat parts and jigs are laid out on, for router or laser: ply for jigs, surfaced wood for cheeks and layers. None: each part has a file of its own only.",
    source: "maker's sheets",
    item: validateTable(sheet),
  },
} as const satisfies Readonly<Record<string, ListRow>>;

export type ListName = keyof typeof LISTS;
/** Values of every list: empty where nothing is given. */
export type ListValues = {
  readonly [K in ListName]: readonly (ValueOf<(typeof LISTS)[K]["item"]> & Within<(typeof LISTS)[K]>)[];
};
type Within<T> = T extends { readonly within: infer W extends Readonly<Record<string, { readonly item: unknown }>> }
  ? { readonly [K in keyof W]: readonly ValueOf<W[K]["item"]>[] }
  : unknown;
export const LIST_NAMES = Object.keys(LISTS) as readonly ListName[];
export const isListName = (key: string): key is ListName => Object.hasOwn(LISTS, key);

export type Cutter = ListValues["cutters"][number];
export type BoardEntry = ListValues["boards"][number];
export type Sheet = ListValues["sheets"][number];

/** The lists within an item of a list. */
export const listsWithin = (name: ListName): NonNullable<ListRow["within"]> => (LISTS[name] as ListRow).within ?? {};

/** Every row of a list's items and of the lists within them, with paths such as "boards[].knots[].from". */
export const listRows = (name: ListName, item = `${name}[].`): { path: string; row: Row }[] => [
  ...rowsOf(LISTS[name].item, item),
  ...Object.entries(listsWithin(name)).flatMap(([key, within]) => rowsOf(within.item, `${item}${key}[].`)),
];
