// What belongs to the shop and not to one plane: what a shop file may hold.
import type { TableSection } from "../parameter.ts";
import { TABLE } from "./index.ts";
import { LIST_NAMES } from "./lists.ts";

const { units, shop, hand, jigs, router } = TABLE;
/** Part of the table whose values may stand in a shop file; lists may too. */
export const SHOP_TABLE = { units, shop, hand, jigs, router } satisfies TableSection;
export const SHOP_KEYS: readonly string[] = [...Object.keys(SHOP_TABLE), ...LIST_NAMES];
