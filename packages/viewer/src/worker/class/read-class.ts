// The class that some files make: every plane with the numbers that it shares, as `lamplane class` makes it.
import { stepsDone } from "@lamplane/bench";
import { type ClassSetups, fewestCoreWidths, shareSetups } from "@lamplane/bench/class";
import { type ClassNesting, nestClass } from "@lamplane/export/nested";
import { carryShop, readDesign, type ShopAccess } from "@lamplane/parameters/design";
import {
  contradictions,
  type DesignText,
  decodeRoster,
  decodeRosterBoards,
  planeFileText,
  type RosterPlane,
  rosterDesign,
} from "@lamplane/parameters/roster";
import type { Design } from "@lamplane/parameters/table";
import { type ClassBoards, classBoards } from "@lamplane/sheets";
import type { ClassText } from "../../protocol/class-view.ts";
import { faultTexts } from "../../state/fault-texts.ts";
import { CLASS } from "../../words/class.ts";
import { type ClassRoles, classRoles } from "./class-roles.ts";

/** A row of the roster: its plane, or its faults in words. */
export interface ReadPlane {
  readonly number: number;
  /** As the roster has it. */
  readonly name: string;
  readonly made?: DesignText;
  readonly faults: readonly string[];
}

export interface ReadClass {
  /** The roster's name without its ending. */
  readonly name: string;
  readonly planes: readonly ReadPlane[];
  readonly setups: ClassSetups;
  readonly boards: ClassBoards | undefined;
  /** Absent where the shop has no sheets. */
  readonly nesting: ClassNesting | undefined;
  readonly coreWidths: { readonly fewest: number; readonly most: number };
  readonly shop: ClassText | undefined;
}

interface Row {
  readonly row: RosterPlane;
  readonly before?: DesignText;
  readonly design?: Design;
  readonly faults: readonly string[];
}

/**
 * @param groups how many core widths; the fewest where absent
 * @returns what keeps the class from being laid out, in words
 */
export function readClass(
  files: readonly ClassText[],
  groups?: number,
): ReadClass | { readonly faults: readonly string[] } {
  const roles = classRoles(files);
  if ("faults" in roles) return roles;
  const base = readBase(roles);
  if ("faults" in base) return base;
  const { units } = base.design;
  const boards = decodeRosterBoards(roles.roster, units);
  if ("faults" in boards) return { faults: faultTexts(boards.faults) };
  const rows = decodeRoster(roles.roster, units).map((row) => readRow(row, base.design, roles));
  return layOut(rows, base, boards.boards.length > 0 ? boards.boards : base.design.boards, roles, groups);
}

function shopAccess(shop: ClassText | undefined): ShopAccess {
  if (!shop) return { open: (name) => ({ problem: CLASS.noShop(name) }) };
  const source = { source: shop.text, file: shop.name };
  return { open: () => source, ...(shop.isShop ? { instead: source } : {}) };
}

/** The text carries what the base's shop file holds. */
function readBase({ base, shop }: ClassRoles): DesignText | { readonly faults: readonly string[] } {
  const read = readDesign(base.text, base.name, shopAccess(shop));
  if (!read.ok) return { faults: faultTexts(read.faults) };
  if (stepsDone(read.design) > 0) return { faults: [CLASS.measuredBase(base.name)] };
  const text = shop ? carryShop(base.text, { source: shop.text, file: shop.name }) : base.text;
  return { text, design: read.design };
}

function readRow(row: RosterPlane, base: Design, { own, roster, shop }: ClassRoles): Row {
  if (row.faults.length > 0) return { row, faults: faultTexts(row.faults) };
  const file = own.get(row.name);
  if (!file) return { row, design: rosterDesign(row, base), faults: [] };
  const read = readDesign(file.text, file.name, shopAccess(shop));
  if (!read.ok) return { row, faults: faultTexts(read.faults) };
  const before = { text: file.text, design: read.design };
  const faults = contradictions(row, read.design, { file: file.name, roster: roster.file });
  return faults.length > 0
    ? { row, faults }
    : { row, before, design: rosterDesign(row, base, read.design.measured), faults };
}

function layOut(
  rows: readonly Row[],
  base: DesignText,
  entries: Design["boards"],
  roles: ClassRoles,
  groups: number | undefined,
): ReadClass {
  const { roster, shop } = roles;
  const sound = rows.filter((each): each is Row & { design: Design } => each.design !== undefined);
  const begun = sound.map(({ design }) => design);
  const coreWidths = { fewest: fewestCoreWidths(begun), most: begun.length };
  const count = groups === undefined || groups < coreWidths.fewest ? undefined : groups;
  const setups = shareSetups(begun, count) as ClassSetups; // so many groups can be had
  const made = sound.map(({ before }, i) =>
    planeFileText(setups.designs[i]!, { base, before, roster: roster.file, shop: shopAccess(shop) }),
  );
  const planes = rows.map((each, i): ReadPlane => {
    const at = sound.indexOf(each as (typeof sound)[number]);
    const { row, faults } = each;
    return { number: i + 1, name: row.written ?? row.name, faults, ...(at < 0 ? {} : { made: made[at]! }) };
  });
  const name = roster.file.replace(/\.[^.]*$/, "");
  const designs = made.map(({ design }) => design);
  const numbers = soundNumbers(planes);
  const boards = classBoards(name, designs, numbers, entries);
  return { name, planes, setups, boards, nesting: nestClass(designs, numbers), coreWidths, shop };
}

/** Numbers in the roster of the planes without faults. */
export const soundNumbers = (planes: readonly ReadPlane[]): number[] =>
  planes.flatMap(({ number, made }) => (made ? [number] : []));
