// What became of a class, as text for a terminal or as data.
import { dirname } from "node:path";
import { classBoardsText } from "@lamplane/bench/boards";
import { type ClassSetups, setupLines } from "@lamplane/bench/class";
import { formatParameter, valueAt } from "@lamplane/parameters/design";
import type { FileChange } from "@lamplane/parameters/roster";
import { type Design, isListName } from "@lamplane/parameters/table";
import { formatLength } from "@lamplane/parameters/units";
import type { ClassBoards } from "@lamplane/sheets";
import { alignColumns } from "../text.ts";
import { CLASS } from "../words/class.ts";
import type { NestingReport } from "./nesting-report.ts";
import type { PackOutcome } from "./pack-job.ts";

/** A row of the roster and what became of it. */
export interface PlaneReport {
  readonly name: string;
  /** The name as the roster has it, where that is another. */
  readonly written?: string | undefined;
  readonly file: string;
  readonly faults: readonly string[];
  readonly changes: readonly FileChange[];
  /** Sizes of the iron that other rows have and this one has not: the base's are taken. */
  readonly fromBase?: readonly string[];
  /** As its file has it now; absent where there are faults. */
  readonly design?: Design;
  /** Its place among the planes without faults. */
  readonly sound?: number;
  /** Absent where no packs were made. */
  readonly outcome?: PackOutcome;
}

export interface ClassReport {
  readonly roster: string;
  /** Options of the command line that the class is read with, as they are to be typed again. */
  readonly options: string;
  readonly reports: readonly PlaneReport[];
  readonly setups: ClassSetups;
  /** Files that were written for the class as a whole. */
  readonly sheets: readonly string[];
  /** Absent without boards. */
  readonly boards?: ClassBoards | undefined;
  /** Absent where the shop has no sheets. */
  readonly nested?: NestingReport | undefined;
}

export function classText(report: ClassReport): string {
  const { roster, reports, sheets } = report;
  const failed = reports.filter(({ faults }) => faults.length > 0).length;
  const first = reports.find((each): each is PlaneReport & { design: Design } => each.design !== undefined);
  return [
    CLASS.head({ planes: reports.length - failed, failed }),
    "",
    ...(first ? setupLines(report.setups, first.design, soundNumbers(reports)) : []),
    "",
    alignColumns([[...CLASS.columns], ...reports.map((each, i) => planeRow(each, i + 1, report))]),
    ...renamedLines(reports),
    ...fromBaseLines(reports),
    ...troubleLines(reports),
    ...changeLines(reports),
    ...(report.boards ? ["", classBoardsText(report.boards.sheet, report.boards.layout)] : []),
    ...(report.nested ? ["", ...report.nested.lines] : []),
    "",
    ...(sheets.length > 0 ? [CLASS.sheets({ files: sheets })] : []),
    ...(first
      ? [CLASS.next({ file: first.file, roster: `${roster}${report.options}`, folder: dirname(first.file) })]
      : []),
    "",
  ].join("\n");
}

/** Numbers in the roster of the planes without faults, in their order. */
const soundNumbers = (reports: readonly PlaneReport[]): number[] =>
  reports.flatMap(({ sound }, i) => (sound === undefined ? [] : [i + 1]));

/** The plane's core width and what it preferred by itself; undefined where it shares none. */
function coreOf({ sound }: PlaneReport, { setups }: ClassReport): { value: number; preferred: number } | undefined {
  for (const { value, planes } of setups.shared.coreWidth)
    for (const { plane, preferred } of planes) if (plane === sound) return { value, preferred };
  return undefined;
}

function planeRow(each: PlaneReport, number: number, report: ClassReport): string[] {
  const { name, design, outcome } = each;
  if (!design) return [`${number}`, name, "", "", CLASS.failed];
  const core = coreOf(each, report);
  const length = (mm: number) => formatLength(mm, design);
  const play = design.body.sideClearance;
  return [
    `${number}`,
    name,
    core ? length(core.value) : "",
    core ? CLASS.sidePlay({ now: length(play), planned: length(play + core.preferred - core.value) }) : "",
    CLASS[outcome?.kind ?? "planned"],
  ];
}

function renamedLines(reports: readonly PlaneReport[]): string[] {
  const lines = reports.flatMap(({ name, written, faults }) =>
    written === undefined || faults.length > 0 ? [] : [CLASS.renamed({ name, written })],
  );
  return lines.length === 0 ? [] : ["", ...lines];
}

function fromBaseLines(reports: readonly PlaneReport[]): string[] {
  const lines = reports.flatMap(({ name, design, fromBase = [] }) =>
    design === undefined
      ? []
      : fromBase.map((path) => {
          const value = formatParameter(path, valueAt(design, path) as number, design);
          return CLASS.fromBase({ name, path, value });
        }),
  );
  return lines.length === 0 ? [] : ["", ...lines];
}

function troubleLines(reports: readonly PlaneReport[]): string[] {
  const lines = reports.flatMap(({ name, faults, outcome }) => [
    ...faults,
    ...(outcome?.kind === "stopped" ? outcome.stops.map((text) => CLASS.stop({ name, text })) : []),
    ...(outcome?.kind === "not-written" ? [CLASS.stop({ name, text: outcome.message })] : []),
  ]);
  return lines.length === 0 ? [] : ["", ...lines];
}

function changeLines(reports: readonly PlaneReport[]): string[] {
  const lines = reports.flatMap(({ file, changes, design }) => {
    if (changes.length === 0 || !design) return [];
    const text = (path: string, value: FileChange["from"]) =>
      value === undefined ? CLASS.unset : formatParameter(path, value, design);
    const change = ({ path, from, to }: FileChange) =>
      isListName(path)
        ? CLASS.listChange({ path, count: Number(to) })
        : CLASS.change({ path, from: text(path, from), to: text(path, to) });
    return [CLASS.changed({ file, changes: changes.map(change) })];
  });
  return lines.length === 0 ? [] : ["", ...lines];
}

/** The same as data, lengths in mm and angles in degrees. */
export function classJson(report: ClassReport): string {
  const { reports, setups, sheets } = report;
  const numbers = soundNumbers(reports);
  const shared = Object.fromEntries(
    Object.entries(setups.shared).map(([key, groups]) => [
      key,
      groups.map(({ value, planes }) => ({ value, planes: planes.map(({ plane }) => numbers[plane]!) })),
    ]),
  );
  const planes = reports.map((each) => {
    const { name, file, faults, changes, outcome } = each;
    return { name, file, faults, changes, core: coreOf(each, report), outcome };
  });
  return `${JSON.stringify({ shared, planes, sheets, boards: report.boards?.layout, nested: report.nested?.data }, null, 2)}\n`;
}
