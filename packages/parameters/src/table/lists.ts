// What a design or a shop file holds several of, each an item of a list with a name of its own.
import type { ListRow, ValueOf } from "../parameter.ts";
import { validateTable } from "../parameter.ts";
import { cutter } from "./cutters.ts";

export const LISTS = {
  cutters: {
    name: "cutters",
    help: "Cutters of the router, in the order of its tool numbers. None for no programs.",
    source: "maker's cutters",
    item: validateTable(cutter),
  },
} as const satisfies Readonly<Record<string, ListRow>>;

export type ListName = keyof typeof LISTS;
/** Values of every list: empty where nothing is given. */
export type ListValues = { readonly [K in ListName]: readonly ValueOf<(typeof LISTS)[K]["item"]>[] };
export const LIST_NAMES = Object.keys(LISTS) as readonly ListName[];
export const isListName = (key: string): key is ListName => Object.hasOwn(LISTS, key);

export type Cutter = ListValues["cutters"][number];
