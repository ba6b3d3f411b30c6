// The shop file of a design: which one it names, and what that holds. A design's own keys stand over it.
import type { SourcePosition } from "../yaml/fault.ts";
import { FaultCollector } from "../yaml/fault.ts";
import { hasHidden } from "../yaml/source.ts";
import { decodeShop } from "./decode.ts";
import type { DecodedValues } from "./decode-section.ts";
import { type DesignEntry, type MapNode, parseDesignNodes } from "./design-nodes.ts";
import type { DesignDetail, DesignFaultCollector, Fault } from "./fault.ts";

/** A shop file as it was found. */
export interface ShopSource {
  readonly source: string | Uint8Array;
  /** Its name, for the faults. */
  readonly file: string;
}
/** Finds a shop file by the name in a design; or says, in a few words, why it cannot be had. */
export type OpenShop = (name: string) => ShopSource | { readonly problem: string };

interface ShopName {
  readonly name: string;
  readonly at: SourcePosition;
}

/** The name of a design's shop file, and the design without it: `shop: my-shop.yaml`, or `shop: { file: my-shop.yaml, … }`. */
export function splitShopName(
  design: MapNode,
  faults: DesignFaultCollector,
): { own: MapNode; named: ShopName | undefined } {
  const shop = design.entries.find(({ key }) => key === "shop");
  const file = shop?.value.kind === "map" ? shop.value.entries.find(({ key }) => key === "file") : shop;
  if (!shop || !file || (file === shop && shop.value.kind !== "text")) return { own: design, named: undefined };
  const own = { ...design, entries: design.entries.flatMap((entry) => (entry === shop ? withoutFile(shop) : [entry])) };
  if (file.value.kind === "refused") return { own, named: undefined };
  const name = file.value.kind === "text" && !file.value.bare ? file.value.text : "";
  if (name.trim() !== "" && !hasHidden(name)) return { own, named: { name, at: file.value.at } };
  faults.add(file.value.at, file === shop ? "shop" : "shop.file", { code: "no-file-name" });
  return { own, named: undefined };
}

/** Name of the shop file in a design's text; undefined where it names none that can be read. */
export function shopNameOf(source: string | Uint8Array): string | undefined {
  const faults = new FaultCollector<DesignDetail>("");
  const top = parseDesignNodes(source, faults);
  return top && splitShopName(top, faults).named?.name;
}

const withoutFile = (shop: DesignEntry): DesignEntry[] =>
  shop.value.kind === "map"
    ? [{ ...shop, value: { ...shop.value, entries: shop.value.entries.filter(({ key }) => key !== "file") } }]
    : [];

/** What a shop file holds, or its faults with their places in it. */
export function readShop({
  source,
  file,
}: ShopSource): { readonly values: DecodedValues } | { readonly faults: Fault[] } {
  const faults = new FaultCollector<DesignDetail>(file);
  const values = decodeShop(parseDesignNodes(source, faults, "shop"), faults);
  return values ? { values } : { faults: faults.sorted() };
}

/** The values of the shop file that a design names, or that stands in for it; none without one. */
export function openNamedShop(
  named: ShopName | undefined,
  openShop: OpenShop,
  instead: ShopSource | undefined,
  faults: DesignFaultCollector,
): { readonly values?: DecodedValues; readonly faults?: Fault[] } {
  if (instead) return readShop(instead);
  if (!named) return {};
  const found = openShop(named.name);
  if ("source" in found) return readShop(found);
  faults.add(named.at, "shop", { code: "shop-not-read", name: named.name, problem: found.problem });
  return {};
}
