// What the commands print about a build and its files: `next`, `build`, `new`, `sweep`, `survey`.
import { countText, sentence } from "@lamplane/parameters/words";

export const NEXT = {
  built: sentence(
    ({ name, first, last }: { name: string; first: number; last: number }) =>
      `${name}: the plane is built. Next in the traveller: ${first}, first shaving; ${last}, after a season.`,
    { name: "apprentice-smoother", first: 14, last: 15 },
  ),
  step: sentence(
    ({ name, number, of, title }: { name: string; number: number; of: number; title: string }) =>
      `${name}, step ${number} of ${of}: ${title}`,
    { name: "apprentice-smoother", number: 4, of: 15, title: "Cut ramp and bed" },
  ),
  stops: sentence(
    ({ count, file }: { count: number; file: string }) =>
      `BEFORE YOU GO ON: ${countText(count, "check fails", "checks fail")}. \`lamplane check ${file}\` shows the fix.`,
    { count: 1, file: "plane.yaml" },
  ),
  planned: sentence(({ value }: { value: string }) => `planned ${value}`, { value: "88.53 mm" }),
  notMeasured: "not measured, planned value kept",
  inFile: sentence(
    ({ file }: { file: string }) => `Measure these too, and correct them in ${file} where your iron differs:`,
    { file: "plane.yaml" },
  ),
  measure: "Then measure:",
  expected: sentence(({ help, value }: { help: string; value: string }) => `${help} Expected: ${value}.`, {
    help: "Width of the core as milled.",
    value: "49.6 mm",
  }),
  done: sentence(
    ({ file, step }: { file: string; step: string }) => `When done: lamplane measured ${file} done=${step}`,
    {
      file: "plane.yaml",
      step: "dry-fit",
    },
  ),
  tooWide: sentence(
    ({ by, file }: { by: string; file: string }) =>
      `Mouth ${by} too wide; no planing closes it. \`lamplane mouth ${file} --seen …\` shows what does.`,
    { by: "0.45 mm", file: "plane.yaml" },
  ),
  latest: sentence(({ title }: { title: string }) => `What "${title}" changed:`, { title: "True the bed" }),
  moved: "  Changed for later steps:",
  change: sentence(({ now, planned }: { now: string; planned: string }) => `${now}, planned ${planned}`, {
    now: "47.6 mm",
    planned: "48 mm",
  }),
  earlier: "From earlier steps; the numbers above allow for it:",
  offPlan: "Off plan:",
  insteadOf: sentence(({ got, asked }: { got: string; asked: string }) => `${got}, not ${asked}`, {
    got: "49.2 mm",
    asked: "49.6 mm",
  }),
  affects: sentence(({ names }: { names: readonly string[] }) => `Still affects: ${names.join("; ")}`, {
    names: ["iron side play 1.2 mm, not 1.6 mm"],
  }),
  cost: sentence(
    ({ name, now, planned }: Record<"name" | "now" | "planned", string>) => `${name} ${now}, not ${planned}`,
    { name: "wedge tip from edge", now: "20.6 mm", planned: "22 mm" },
  ),
  passes: "  With these values every check still passes.",
  unread: sentence(({ values }: { values: string }) => `Not measured; planned value kept: ${values}.`, {
    values: "iron width 48 mm, cheek thickness 8 mm",
  }),
} as const;

export const BUILD = {
  written: sentence(
    ({ path, count, replaced }: { path: string; count: number; replaced: boolean }) =>
      `${replaced ? "Replaced" : "Wrote"} ${path} (${countText(count, "file")}).`,
    { path: "packs/apprentice-smoother", count: 50, replaced: false },
  ),
  nothing: "Nothing was written.",
  traveller: "Bench: card.pdf, traveller.pdf. To glue on the wood: layout.pdf, at 100 %.",
  fitTest: "Print jigs/fit-test.stl before the jigs.",
  kept: sentence(({ names }: { names: readonly string[] }) => `Kept your own files: ${names.join(", ")}.`, {
    names: ["notes (1).txt (was notes.txt)"],
  }),
  keptAs: sentence(({ from, to }: { from: string; to: string }) => `${to} (was ${from})`, {
    from: "notes.txt",
    to: "notes (1).txt",
  }),
  carried: sentence(
    ({ count, older }: { count: number; older: readonly string[] }) =>
      `Kept ${countText(count, "file")} of earlier runs.${older.length === 0 ? "" : ` Out of date, build again: ${older.join(", ")}.`}`,
    { count: 15, older: ["jigs/bed-gauge.stl"] },
  ),
} as const;

/** Where a figure comes from, under its name. */
export const FIGURE_ROW = {
  origin: sentence(({ formula, source }: { formula: string; source: string }) => `${formula}; ${source}`, {
    formula: "cot β + cot ρ",
    source: "plane geometry",
  }),
} as const;

export const SWEEP = {
  caption: sentence(
    ({
      name,
      help,
      by,
      of,
      at,
      dashed,
    }: Record<"name" | "help" | "by" | "of" | "at", string> & { dashed: boolean }) => {
      const lines = by === "" ? "" : ` By ${by}${of}${at === "" ? "" : `, at ${at}`}.`;
      return `${name}: ${help}${lines}${dashed ? " Dashed where a check fails." : ""}`;
    },
    {
      name: "trestle-jack",
      help: "Gap between the tips of the blocks.",
      by: "iron.thickness",
      of: " (3 of 5 values)",
      at: "pin.diameter 12",
      dashed: true,
    },
  ),
  someLines: sentence(({ drawn, all }: { drawn: number; all: number }) => ` (${drawn} of ${all} values)`, {
    drawn: 3,
    all: 5,
  }),
  noVary: "Name what to vary: --vary bed.angle=43..57:0.5",
  plots: sentence(
    ({ folder, names }: { folder: string; names: readonly string[] }) =>
      `${folder}: ${countText(names.length, "plot")}${names.length > 0 ? `, ${names.join(", ")}` : ""}.`,
    { folder: "packs", names: ["sweep-glue-gap.svg"] },
  ),
  progress: sentence(({ done, count }: { done: number; count: number }) => `${done} of ${count} designs`, {
    done: 12,
    count: 33,
  }),
  written: sentence(
    ({ file, count, restored }: { file: string; count: number; restored: number }) =>
      `${file}: ${countText(count, "design")}${restored > 0 ? `, ${restored} from the run that was stopped` : ""}.`,
    { file: "sweep.csv", count: 33, restored: 0 },
    { file: "sweep.csv", count: 24, restored: 10 },
  ),
  twoRuns: "another run of the same sweep is writing it",
  twoRunsRemedy: "run it again when that one has ended",
  noTable: "this file is not the table of a sweep",
  noTableRemedy: "it was left as it is; choose another name",
  noPlot: "this file is not the plot of a sweep",
  noPlotRemedy: "it was left as it is; choose another folder",
  twice: sentence(({ path }: { path: string }) => `--vary ${path}: entered twice; name each parameter once`, {
    path: "bed.angle",
  }),
  tooMany: sentence(
    ({ count, most }: { count: number; most: number }) =>
      `--vary: makes ${count} designs (max ${most}). Take larger steps.`,
    { count: 2_000_000, most: 1_000_000 },
  ),
  tooManyValues: sentence(
    ({ path, count }: { path: string; count: number }) => `--vary ${path}: makes ${count} values; take larger steps`,
    {
      path: "bed.angle",
      count: 2_000_000,
    },
  ),
  keyRange: sentence(
    ({ given }: { given: string }) =>
      `--vary ${given}: write KEY=FROM..TO:STEP or KEY=VALUE,VALUE, such as bed.angle=43..57:0.5`,
    { given: "nonsense" },
  ),
  onlyNumbers: sentence(
    ({ path }: { path: string }) => `--vary ${path}: only numbers have a range; list the words with commas`,
    {
      path: "pin.section",
    },
  ),
  rising: sentence(
    ({ path, range }: { path: string; range: string }) =>
      `--vary ${path}: read ${range}; the range must rise, in steps above 0`,
    { path: "bed.angle", range: "57..43:1" },
  ),
  notRead: sentence(
    ({ path, word, fault }: { path: string; word: string; fault: string }) =>
      `--vary ${path}: read "${word}": ${fault}`,
    {
      path: "bed.angle",
      word: "steep",
      fault: "this is not a number; write one such as 47 or 47°",
    },
  ),
  refused: sentence(({ path, fault }: { path: string; fault: string }) => `--vary ${path}: ${fault}`, {
    path: "bed.angle",
    fault: "read 300; allowed: 35° to 65°",
  }),
  needsNumbers: "--plots: vary a parameter over numbers: --vary bed.angle=43..57:0.5",
  tooManyPlots: sentence(
    ({ count, most }: { count: number; most: number }) =>
      `--plots: makes ${count} plots (max ${most}). Vary fewer parameters, or name fewer figures.`,
    { count: 120, most: 50 },
  ),
} as const;

export const SURVEY_COMMAND = {
  sheetOnly: "--blank prints an empty sheet; leave the readings file out",
  noReadings: sentence(({ howToStart }: { howToStart: string }) => `Name the readings file too; ${howToStart}.`, {
    howToStart: "`lamplane survey FILE --blank` prints one to fill in",
  }),
  inRecess: sentence(
    ({ lines }: { lines: readonly number[] }) =>
      `${lines.length === 1 ? "Line" : "Lines"} ${lines.join(", ")}: these readings seem to lie in the recess. Survey the bed before you rout it; if it is routed, leave these stations out.`,
    { lines: [4] },
  ),
} as const;
