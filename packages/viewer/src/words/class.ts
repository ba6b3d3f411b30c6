// What the page says of a class: its roster, its planes, its files.
import { countText, listText } from "@lamplane/parameters/words";

export const CLASS = {
  title: "Class",
  intro:
    "Open a roster, CSV or YAML, together with its base design. A row is a plane: a name, an iron, and what else differs.",
  open: "open a roster…",
  add: "add files…",
  addHelp: "The base design, its shop file, or a plane's own design file, which brings what was measured",
  drop: "Or drop the files on this page.",
  sheet: "one plane",
  sheetHelp: "Back to the drawing sheet",
  theme: "light / dark",
  back: (name: string): string => `‹ ${name}`,
  backHelp: "Back to the class, with what was measured here",
  working: "Laying out the class…",
  making: "making…",
  heading: ({ planes, built, stuck, faulty }: Record<"planes" | "built" | "stuck" | "faulty", number>): string =>
    `${countText(planes, "plane")}: ${built} built, ${stuck} stuck${faulty === 0 ? "" : `, ${faulty} with faults`}.`,
  setups: "Shared set-ups",
  boards: "Boards",
  planes: "Planes",
  files: "Class sheet",
  filesHelp: "One page for each machine set-up and one for each pupil; the same numbers as a table.",
  unreadable: "One of these files cannot be read; is it a file, and still there?",
  unnamed: "no name",
  size: ({ iron, core }: Record<"iron" | "core", string>): string => `iron ${iron}, core ${core}`,
  progress: (done: number, steps: number): string => `${done} of ${countText(steps, "step")} done`,
  measured: (text: string): string => `measured: ${text}`,
  openPlane: (name: string): string => `Open ${name}`,
  faults: "Not understood",
  notKept:
    "This browser keeps nothing from one page to the next, so a class cannot be opened here. `lamplane view ROSTER` shows it.",
  noRoster: "None of these files is a roster: a CSV table, or a YAML file with planes.",
  manyRosters: (names: readonly string[]): string => `${listText(names)} are rosters; open one of them.`,
  noBase: (roster: string): string => `${roster} names no base design. Add the file of the base design.`,
  namedBase: (roster: string, base: string): string => `${roster} names ${base} as its base design. Add that file.`,
  manyBases: (names: readonly string[]): string =>
    `${listText(names)} may each be the base design. Open the roster with one of them.`,
  measuredBase: (name: string): string =>
    `${name} holds measured values, which are of one plane; the base design needs one with nothing measured.`,
  noShop: (name: string): string => `add ${name} to the files, or write its values into the base design`,
} as const;
