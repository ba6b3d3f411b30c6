// What the page says of a class: its roster, its planes, its files.
import { countText, listText, sentence } from "@lamplane/parameters/words";

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
  back: sentence((name: string) => `‹ ${name}`, "school-roster"),
  unwritten: "The changes are not written back. Write them back, or press again to leave without them.",
  changed: "A file of the class changed on disk; the sheet follows it.",
  noPlane: sentence(({ roster, plane }: Record<"roster" | "plane", string>) => `${roster} has no plane ${plane} now`, {
    roster: "class.csv",
    plane: "anna",
  }),
  writeBackHelp: sentence(
    ({ roster, file }: Record<"roster" | "file", string>) =>
      `Write the changes into the plane's row of ${roster}, what was measured into ${file}`,
    { roster: "class.csv", file: "anna.yaml" },
  ),
  written: sentence(
    ({ files, roster, isShared }: { files: readonly string[]; roster: string; isShared: boolean }) =>
      [
        `Written into ${listText(files)}.`,
        ...(isShared ? ["The class shares core widths, so the side play may come out otherwise."] : []),
        ...(files.includes(roster)
          ? [`Run \`lamplane class ${roster}\` again, with the options that you gave it before, for packs and sheets.`]
          : []),
      ].join(" "),
    { files: ["anna.yaml", "class.csv"], roster: "class.csv", isShared: true },
    { files: ["anna.yaml"], roster: "class.csv", isShared: false },
  ),
  backHelp: "Back to the class, with what was measured here",
  working: "Laying out the class…",
  making: "making…",
  heading: sentence(
    ({ planes, built, stuck, faulty }: Record<"planes" | "built" | "stuck" | "faulty", number>) =>
      `${countText(planes, "plane")}: ${built} built, ${stuck} stuck${faulty === 0 ? "" : `, ${faulty} with faults`}.`,
    { planes: 12, built: 3, stuck: 1, faulty: 2 },
  ),
  setups: "Shared set-ups",
  coreWidthsLabel: "Core widths",
  coreWidths: sentence(
    ({ count, fewest }: { count: number; fewest: number }) => (count === fewest ? `${count}, the fewest` : `${count}`),
    { count: 2, fewest: 2 },
    { count: 3, fewest: 2 },
  ),
  coreWidthsHelp: "More widths give each iron a side play nearer to what was planned",
  boards: "Boards",
  sheets: "Sheets",
  planes: "Planes",
  files: "Class sheet",
  filesHelp: "One page for each machine set-up and one for each pupil; the same numbers as a table.",
  sheetsHelp: "A drawing of each of the shop's sheets, and its program where there is a router.",
  unreadable: "One of these files cannot be read; is it a file, and still there?",
  unnamed: "no name",
  size: sentence(({ iron, core }: Record<"iron" | "core", string>) => `iron ${iron}, core ${core}`, {
    iron: "50.8 × 3.1 mm",
    core: "52.2 mm",
  }),
  progress: sentence(
    ({ done, steps }: { done: number; steps: number }) => `${done} of ${countText(steps, "step")} done`,
    { done: 3, steps: 15 },
  ),
  measured: sentence((text: string) => `measured: ${text}`, "core width"),
  openPlane: sentence((name: string) => `Open ${name}`, "anna"),
  faults: "Not understood",
  notKept:
    "This browser keeps nothing from one page to the next, so a class cannot be opened here. `lamplane view ROSTER` shows it.",
  noRoster: "None of these files is a roster: a CSV table, or a YAML file with planes.",
  manyRosters: sentence(
    (names: readonly string[]) => `${listText(names)} are rosters; open one of them.`,
    ["a.csv", "b.csv"],
  ),
  noBase: sentence(
    (roster: string) => `${roster} names no base design. Add the file of the base design.`,
    "school.csv",
  ),
  namedBase: sentence(
    ({ roster, base }: { roster: string; base: string }) =>
      `${roster} names ${base} as its base design. Add that file.`,
    { roster: "school.yaml", base: "smoother.yaml" },
  ),
  manyBases: sentence(
    (names: readonly string[]) => `${listText(names)} may each be the base design. Open the roster with one of them.`,
    ["a.yaml", "b.yaml"],
  ),
  measuredBase: sentence(
    (name: string) =>
      `${name} holds measured values, which are of one plane; the base design needs one with nothing measured.`,
    "base.yaml",
  ),
  noShop: sentence(
    (name: string) => `add ${name} to the files, or write its values into the base design`,
    "school.yaml",
  ),
} as const;
