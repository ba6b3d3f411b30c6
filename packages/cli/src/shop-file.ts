// Shop files on the disk: the one that a design names, from the design's folder, or the one of the command line.
import { dirname, resolve } from "node:path";
import { type OpenShop, type ShopAccess, type ShopSource, shopNameOf } from "@lamplane/parameters/design";
import { readContent } from "./file-content.ts";
import { InputRefused } from "./io.ts";
import { fileTitle, STANDARD_INPUT } from "./standard-input.ts";
import { DESIGN_FILE, SHOP_FILE } from "./words/commands.ts";

const readShopFile = (path: string): ShopSource => ({ source: readContent(path, SHOP_FILE), file: fileTitle(path) });

/** Where the shop file is that a design names: beside the design; one from the standard input stands in the folder of the run. */
function pathBeside(design: string, name: string): string {
  const folder = design === STANDARD_INPUT ? "." : dirname(design);
  return folder === "." ? name : resolve(folder, name);
}

const openBeside =
  (design: string): OpenShop =>
  (name) => {
    const path = pathBeside(design, name);
    try {
      return readShopFile(path);
    } catch (error) {
      if (!(error instanceof InputRefused)) throw error;
      return { problem: error.message.replace(`${path}: `, "") };
    }
  };

/** @param given shop file of the command line. @throws InputRefused where that cannot be read */
export const shopAccess = (design: string, given: string | undefined): ShopAccess => ({
  open: openBeside(design),
  ...(given !== undefined && { instead: readShopFile(given) }),
});

/** Path of the shop file that goes with a design; undefined where there is none, or the design cannot be read. */
export function shopPath(design: string, given: string | undefined): string | undefined {
  if (given !== undefined) return given;
  try {
    const name = shopNameOf(readContent(design, DESIGN_FILE));
    return name === undefined ? undefined : pathBeside(design, name);
  } catch (error) {
    if (error instanceof InputRefused) return undefined;
    throw error;
  }
}

/** The shop file that goes with a design; undefined where there is none to read. */
export function shopSourceOf(design: string, given: string | undefined): ShopSource | undefined {
  const path = shopPath(design, given);
  try {
    return path === undefined ? undefined : readShopFile(path);
  } catch (error) {
    if (error instanceof InputRefused) return undefined;
    throw error;
  }
}
