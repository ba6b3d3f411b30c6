// What `lamplane class` prints: shared set-ups, each plane's pack, and where the builds stand.
import { countText, listText, sentence } from "@lamplane/parameters/words";

export const ROSTER_FILE = {
  what: "roster",
  howToStart: "write one with a row for each plane: `name,iron.width,iron.thickness`",
} as const;

export const CLASS = {
  noBase: sentence(({ file }: { file: string }) => `${file} names no base design; add --base DESIGN`, {
    file: "class.csv",
  }),
  measuredBase: sentence(
    ({ file }: { file: string }) =>
      `${file} holds measured values, which are of one plane; give a base design with nothing measured`,
    { file: "my-plane.yaml" },
  ),
  unnamed: sentence(({ line }: { line: number }) => `(line ${line})`, { line: 4 }),
  groups: sentence(
    ({ read, fewest }: { read: number; fewest: number }) =>
      `--groups ${read}: these irons need at least ${countText(fewest, "core width")}; write ${fewest} or more, or leave it out for the fewest`,
    { read: 1, fewest: 2 },
  ),
  head: sentence(
    ({ planes, failed }: { planes: number; failed: number }) =>
      `${countText(planes, "plane")}${failed === 0 ? "" : `, ${failed} with faults in the roster`}.`,
    { planes: 12, failed: 0 },
    { planes: 11, failed: 1 },
  ),
  columns: ["", "plane", "core", "iron side play", "pack"],
  sidePlay: sentence(
    ({ now, planned }: { now: string; planned: string }) => (now === planned ? now : `${now}, planned ${planned}`),
    { now: "1.3 mm", planned: "1.6 mm" },
  ),
  made: "written",
  current: "unchanged, kept",
  planned: "not written",
  stopped: "checks fail",
  "not-written": "not written",
  failed: "faults",
  stop: sentence(({ name, text }: { name: string; text: string }) => `${name}: ${text}`, {
    name: "anna",
    text: "Gap between block tips: 0.02 mm (min 0.1). Raise the mouth.",
  }),
  changed: sentence(
    ({ file, changes }: { file: string; changes: readonly string[] }) => `${file}: ${changes.join(", ")}`,
    { file: "packs/anna.yaml", changes: ["iron.thickness 3.1 mm → 3.2 mm"] },
  ),
  change: sentence(({ path, from, to }: Record<"path" | "from" | "to", string>) => `${path} ${from} → ${to}`, {
    path: "iron.thickness",
    from: "3.1 mm",
    to: "3.2 mm",
  }),
  unset: "unset",
  listChange: sentence(
    ({ path, count }: { path: string; count: number }) => `${path} changed (${countText(count, "entry", "entries")})`,
    { path: "sheets", count: 2 },
  ),
  renamed: sentence(
    ({ name, written }: { name: string; written: string }) => `"${written}" is ${name} in files and on sheets.`,
    { name: "Anna-Berg", written: "Anna Berg" },
  ),
  fromBase: sentence(
    ({ name, path, value }: Record<"name" | "path" | "value", string>) =>
      `${name}: no ${path} in the roster; the base's ${value} is taken.`,
    { name: "ben", path: "iron.width", value: "48 mm" },
  ),
  foreign: "there is something that is no sheet of a class",
  foreignRemedy: "it was left as it is; move it away or choose another folder",
  progress: sentence(({ done, of }: { done: number; of: number }) => `${done} of ${countText(of, "pack")}`, {
    done: 3,
    of: 12,
  }),
  sheets: sentence(({ files }: { files: readonly string[] }) => `Wrote ${listText(files)}.`, {
    files: ["packs/class.pdf", "packs/class.csv"],
  }),
  next: sentence(
    ({ file, roster, folder }: Record<"file" | "roster" | "folder", string>) =>
      `\`lamplane next ${file}\` says what to do at one plane, \`lamplane class ${roster} --out ${folder} --status\` where all stand.`,
    { file: "packs/anna.yaml", roster: "class.csv", folder: "packs" },
  ),
} as const;

export const STATUS = {
  head: sentence(
    ({ planes, built, stuck }: { planes: number; built: number; stuck: number }) =>
      `${countText(planes, "plane")}: ${built} built, ${stuck} stuck.`,
    { planes: 12, built: 2, stuck: 1 },
  ),
  columns: ["", "plane", "next", "measured", ""],
  missing: sentence(({ file }: { file: string }) => `${file} is missing; the values of the roster are used`, {
    file: "packs/anna.yaml",
  }),
} as const;

/** Changes made on the page of one plane. */
export const PLANE_EDIT = {
  noParameter: sentence(({ path }: { path: string }) => `there is no parameter ${path}`, { path: "bed.angel" }),
  name: sentence(
    ({ plane, roster }: Record<"plane" | "roster", string>) =>
      `name: ${plane} gets another name in ${roster} itself; rename its design file and its pack too`,
    { plane: "anna", roster: "class.csv" },
  ),
  noRow: sentence(({ plane, roster }: Record<"plane" | "roster", string>) => `${roster} has no plane ${plane} now`, {
    plane: "anna",
    roster: "class.csv",
  }),
  otherPlane: sentence(
    ({ plane, read }: Record<"plane" | "read", string>) => `the design is ${read}'s, not ${plane}'s`,
    { plane: "anna", read: "ben" },
  ),
} as const;
