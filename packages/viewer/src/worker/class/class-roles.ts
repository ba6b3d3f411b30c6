// Which of the files that were opened together is what: roster, base design, shop file, a plane's own file.
import { shopNameOf } from "@lamplane/parameters/design";
import { decodeRoster, parseRoster, type RosterFile } from "@lamplane/parameters/roster";
import type { ClassText } from "../../protocol/class-view.ts";
import { faultTexts } from "../../state/fault-texts.ts";
import { isRoster } from "../../state/roster-text.ts";
import { CLASS } from "../../words/class.ts";

export interface ClassRoles {
  readonly roster: RosterFile;
  readonly base: ClassText;
  readonly shop: ClassText | undefined;
  /** By the plane's name. */
  readonly own: ReadonlyMap<string, ClassText>;
}

const lastPart = (path: string): string => path.split(/[\\/]/).at(-1)!;

/** @returns what is wrong or missing, in words, where the class cannot be laid out */
export function classRoles(files: readonly ClassText[]): ClassRoles | { readonly faults: readonly string[] } {
  const rosters = files.filter(isRoster);
  const [file] = rosters;
  if (!file) return { faults: [CLASS.noRoster] };
  if (rosters.length > 1) return { faults: [CLASS.manyRosters(rosters.map(({ name }) => name))] };
  const read = parseRoster(file.text, file.name);
  if (!read.ok) return { faults: faultTexts(read.faults) };
  const { roster } = read;
  const named = roster.base === undefined ? undefined : lastPart(roster.base);
  const others = files.filter((other) => other !== file);
  const names = new Set(decodeRoster(roster, "mm").map(({ name }) => name));
  const planeOf = ({ name }: ClassText) => {
    const plane = name.replace(/\.(ya?ml|json)$/i, "");
    return names.has(plane) && name !== named ? plane : undefined;
  };
  const designs = others.filter((other) => planeOf(other) === undefined);
  const shopOf = ({ text }: ClassText) => {
    const shop = shopNameOf(text);
    return shop === undefined ? undefined : designs.find(({ name }) => name === lastPart(shop));
  };
  const shops = new Set([...designs.map(shopOf), ...designs.filter(({ isShop }) => isShop)]);
  const bases = named === undefined ? designs.filter((each) => !shops.has(each)) : designs.filter(isNamed(named));
  const [base] = bases;
  if (!base)
    return {
      faults: [named === undefined ? CLASS.noBase(file.name) : CLASS.namedBase({ roster: file.name, base: named })],
    };
  if (bases.length > 1) return { faults: [CLASS.manyBases(bases.map(({ name }) => name))] };
  const own = others.flatMap((other): [string, ClassText][] => {
    const plane = planeOf(other);
    return plane === undefined ? [] : [[plane, other]];
  });
  return { roster, base, shop: files.find(({ isShop }) => isShop) ?? shopOf(base), own: new Map(own) };
}

const isNamed =
  (wanted: string) =>
  ({ name }: ClassText): boolean =>
    name === wanted;
