// A maker's file, or plain values, → a whole design or every fault at once.
import { SHOP_NOT_OPENED } from "../words/design-faults.ts";
import { FaultCollector } from "../yaml/fault.ts";
import { type DesignResult, decodeDesign } from "./decode.ts";
import { parseDesignNodes } from "./design-nodes.ts";
import type { DesignDetail } from "./fault.ts";
import { fromObject } from "./object-nodes.ts";
import { type OpenShop, openNamedShop, type ShopSource, splitShopName } from "./shop-file.ts";

/** Where a design's shop file comes from. */
export interface ShopAccess {
  /** Finds the file that the design names. */
  readonly open?: OpenShop;
  /** Stands in the place of the one that the design names, if it names one. */
  readonly instead?: ShopSource;
}

const NO_FILES: OpenShop = () => ({ problem: SHOP_NOT_OPENED });

/**
 * The design in a YAML file, with what its shop file holds where it says nothing itself.
 * @param file its name, for the faults only
 */
export function readDesign(
  source: string | Uint8Array,
  file: string,
  { open = NO_FILES, instead }: ShopAccess = {},
): DesignResult {
  const faults = new FaultCollector<DesignDetail>(file);
  const top = parseDesignNodes(source, faults);
  if (!top) return { ok: false, faults: faults.sorted() };
  const { own, named } = splitShopName(top, faults);
  const shop = openNamedShop(named, open, instead, faults);
  const result = decodeDesign(own, "as given", faults, shop.values);
  if (!shop.faults) return result;
  return { ok: false, faults: [...(result.ok ? [] : result.faults), ...shop.faults] };
}

/** The design that a file is by itself: its shop file, if it names one, is left closed. */
export function readOwnDesign(source: string | Uint8Array, file = ""): DesignResult {
  const faults = new FaultCollector<DesignDetail>(file);
  const top = parseDesignNodes(source, faults);
  return decodeDesign(top && splitShopName(top, faults).own, "as given", faults);
}

/**
 * The design that nested plain values make with the defaults.
 * @param values bare lengths are mm whatever `units` says; faults have line 0
 */
export function completeDesign(values: unknown): DesignResult {
  const faults = new FaultCollector<DesignDetail>("");
  return decodeDesign(fromObject(values, faults), "mm", faults);
}
