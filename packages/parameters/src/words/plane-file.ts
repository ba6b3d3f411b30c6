// What stands in the design files of a class, and what is said of them.
import { sentence } from "./sentence.ts";

export const PLANE_FILE = {
  head: sentence(
    ({ name, roster }: { name: string; roster: string }) =>
      `${name}: made by \`lamplane class\`. Measured values stay; change the others in ${roster} and run it again.`,
    { name: "anna", roster: "class.csv" },
  ),
  contradiction: sentence(
    ({
      roster,
      line,
      file,
      path,
      theirs,
      own,
    }: Record<"roster" | "file" | "path" | "theirs" | "own", string> & { line: number }) =>
      `${roster}:${line}: ${path}: ${theirs} here, ${own} in ${file}; take one of them out`,
    {
      roster: "class.csv",
      line: 3,
      file: "packs/anna.yaml",
      path: "measured.mouthSeen",
      theirs: "0.1 mm",
      own: "0.2 mm",
    },
  ),
  oldIron: sentence(
    ({
      roster,
      line,
      file,
      path,
      key,
      now,
      reading,
    }: Record<"roster" | "file" | "path" | "key" | "now" | "reading", string> & { line: number }) =>
      `${roster}:${line}: ${path}: ${now} here, but ${file} has ${key} ${reading}, measured on the iron before. Measure the new iron: \`lamplane measured ${file} ${key}=…\``,
    {
      roster: "class.csv",
      line: 3,
      file: "packs/ben.yaml",
      path: "iron.thickness",
      key: "ironThickness",
      now: "3.3 mm",
      reading: "3.62 mm",
    },
  ),
} as const;
