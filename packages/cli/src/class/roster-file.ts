// A roster and its base design from the disk.
import { dirname, join } from "node:path";
import { carryShop, faultText } from "@lamplane/parameters/design";
import { decodeRoster, decodeRosterBoards, parseRoster, type RosterPlane } from "@lamplane/parameters/roster";
import type { BoardEntry, Design } from "@lamplane/parameters/table";
import { decodeDesignBytes, readDesignBytes } from "../design-file.ts";
import { faultLines, readContent } from "../file-content.ts";
import { InputRefused } from "../io.ts";
import { shopSourceOf } from "../shop-file.ts";
import { fileTitle } from "../standard-input.ts";
import { CLASS, ROSTER_FILE } from "../words/class.ts";

export interface LoadedRoster {
  /** The text carries what the base's shop file holds: the planes' files stand in another folder. */
  readonly base: { readonly file: string; readonly text: string; readonly design: Design };
  readonly planes: readonly RosterPlane[];
  /** The roster's own, or the base's. */
  readonly boards: readonly BoardEntry[];
}

/**
 * @param baseFile the base design, where the roster names none or another is wanted
 * @param shopFile stands in the place of the shop file that the base names
 * @throws InputRefused where the roster cannot be laid out or the base is no design; a row's own faults stand with the row
 */
export function loadRoster(file: string, baseFile: string | undefined, shopFile?: string): LoadedRoster {
  const read = parseRoster(readContent(file, ROSTER_FILE), fileTitle(file));
  if (!read.ok) throw new InputRefused(faultLines(read.faults, faultText));
  const { roster } = read;
  const named = baseFile ?? (roster.base === undefined ? undefined : join(dirname(file), roster.base));
  if (named === undefined) throw new InputRefused(CLASS.noBase({ file }));
  const bytes = readDesignBytes(named);
  const design = decodeDesignBytes(bytes, fileTitle(named), shopFile);
  const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
  const shop = shopSourceOf(named, shopFile);
  const own = decodeRosterBoards(roster, design.units);
  if ("faults" in own) throw new InputRefused(faultLines(own.faults, faultText));
  return {
    base: { file: named, text: shop ? carryShop(text, shop) : text, design },
    planes: decodeRoster(roster, design.units),
    boards: own.boards.length > 0 ? own.boards : design.boards,
  };
}
