// `lamplane class`: every plane of a roster: set-ups shared, packs made, sheets for the day at the machines; or where the builds stand.
import { basename, extname } from "node:path";
import { stepsDone } from "@lamplane/bench";
import { type ClassSetups, shareSetups } from "@lamplane/bench/class";
import type { FileChange } from "@lamplane/parameters/roster";
import type { Design } from "@lamplane/parameters/table";
import { makeClassFolder } from "../class/class-folder.ts";
import { writeClassSheets } from "../class/class-sheets.ts";
import { classJson, classText, type PlaneReport } from "../class/class-text.ts";
import type { NestingReport } from "../class/nesting-report.ts";
import type { PackOutcome } from "../class/pack-job.ts";
import { makePacks } from "../class/packs.ts";
import { type ClassPlane, classPlane, writePlaneFile } from "../class/plane-files.ts";
import { type LoadedRoster, loadRoster } from "../class/roster-file.ts";
import { statusJson, statusText } from "../class/status-text.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { VERSION } from "../version.ts";
import { CLASS } from "../words/class.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";

export interface ClassOptions {
  readonly base: string | undefined;
  /** Shop file in the place of the one that the base names. */
  readonly shop: string | undefined;
  /** Folder that design files, packs and sheets go into. */
  readonly out: string;
  /** How many core widths; the fewest where absent. */
  readonly groups: number | undefined;
  /** Design files and sheets only, no packs. */
  readonly plan: boolean;
  /** Only says where the builds stand. */
  readonly status: boolean;
  readonly json: boolean;
}

const MOST_GROUPS = 500;

/** @throws InputRefused for what is no whole number over 0 */
export function parseGroups(read: number | undefined): number | undefined {
  if (read === undefined || (Number.isInteger(read) && read >= 1 && read <= MOST_GROUPS)) return read;
  throw new InputRefused(ARGUMENT_FAULT.wholeNumber({ option: "--groups", read, least: 1, most: MOST_GROUPS }));
}

export async function classCommand(io: Io, file: string, options: ClassOptions): Promise<Exit> {
  const roster = loadRoster(file, options.base, options.shop);
  if (stepsDone(roster.base.design) > 0) throw new InputRefused(CLASS.measuredBase({ file: roster.base.file }));
  const planes = roster.planes.map((row) => classPlane(row, roster.base.design, options.out, file));
  if (options.status) return statusCommand(io, planes, options.json);
  return buildClass(io, file, roster, planes, options);
}

function statusCommand(io: Io, planes: readonly ClassPlane[], json: boolean): Exit {
  io.out(json ? statusJson(planes) : statusText(planes));
  return planes.some(({ faults }) => faults.length > 0) ? EXIT.checkFailed : EXIT.done;
}

type SoundPlane = ClassPlane & Required<Pick<ClassPlane, "design">>;

async function buildClass(
  io: Io,
  file: string,
  roster: LoadedRoster,
  planes: readonly ClassPlane[],
  options: ClassOptions,
): Promise<Exit> {
  const sound = planes.filter((plane): plane is SoundPlane => plane.design !== undefined);
  const setups = requireSetups(sound, options.groups);
  await makeClassFolder(options.out);
  const written = sound.map((plane, i) => writePlaneFile(plane, setups.designs[i]!, roster, file));
  const designs = written.map(({ design }) => design);
  const outcomes: readonly (PackOutcome | undefined)[] = options.plan
    ? []
    : await makePacks(designs, options.out, (done) => {
        if (io.showsProgress)
          io.err(done === designs.length ? "\r\u001b[K" : `\r\u001b[K${CLASS.progress({ done, of: designs.length })}`);
      });
  const reports = reportsOf(planes, sound, written, outcomes).map((report, i) => ({
    ...report,
    fromBase: ironOfTheBase(roster.planes, i),
  }));
  const numbers = sound.map((plane) => planes.indexOf(plane) + 1);
  const name = basename(file, extname(file));
  const { classBoards } = await import("@lamplane/sheets");
  const boards = classBoards(name, designs, numbers, roster.boards);
  const nested = await sheetsOf(designs, numbers);
  const content = { name, designs, numbers, boards: boards?.sheet, nesting: nested?.nesting, version: VERSION };
  const sheets = await writeClassSheets(content, options.out);
  const given = (["base", "shop"] as const).map((name) =>
    options[name] === undefined ? "" : ` --${name} ${options[name]}`,
  );
  const report = { roster: file, options: given.join(""), reports, setups, sheets, boards, nested };
  io.out(options.json ? classJson(report) : classText(report));
  const lacksWood = boards?.layout.bodies.includes(undefined) === true;
  return (lacksWood || nested?.lacksRoom) && exitOf(reports) === EXIT.done ? EXIT.checkFailed : exitOf(reports);
}

/** Asked only where there are sheets: it draws every part and jig. */
async function sheetsOf(designs: readonly Design[], numbers: readonly number[]): Promise<NestingReport | undefined> {
  if (!designs.some(({ sheets }) => sheets.length > 0)) return undefined;
  const { nestingReport } = await import("../class/nesting-report.ts");
  return nestingReport(designs, numbers);
}

function requireSetups(planes: readonly SoundPlane[], groups: number | undefined): ClassSetups {
  const result = shareSetups(
    planes.map(({ design }) => design),
    groups,
  );
  if ("fewestCoreWidths" in result)
    throw new InputRefused(CLASS.groups({ read: groups!, fewest: result.fewestCoreWidths }));
  return result;
}

/** Every row of the roster with what became of it, in its order. */
function reportsOf(
  planes: readonly ClassPlane[],
  sound: readonly SoundPlane[],
  files: readonly { readonly design: ClassPlane["design"]; readonly changes: readonly FileChange[] }[],
  outcomes: readonly (PackOutcome | undefined)[],
): PlaneReport[] {
  return planes.map((plane) => {
    const i = sound.indexOf(plane as SoundPlane);
    const { name, written, file, faults } = plane;
    if (i < 0) return { name, written, file, faults, changes: [] };
    const { design, changes } = files[i]!;
    const outcome = outcomes[i];
    return { name, written, file, faults, changes, design: design!, sound: i, ...(outcome ? { outcome } : {}) };
  });
}

const IRON = ["iron.width", "iron.thickness"];

/** Sizes of the iron that other rows have and this one has not. */
function ironOfTheBase(rows: LoadedRoster["planes"], i: number): string[] {
  const has = (row: (typeof rows)[number], path: string) => row.values.some((value) => value.path === path);
  return IRON.filter((path) => rows.some((row) => has(row, path)) && !has(rows[i]!, path));
}

function exitOf(reports: readonly PlaneReport[]): Exit {
  if (reports.some(({ outcome }) => outcome?.kind === "not-written")) return EXIT.couldNotWrite;
  const isSound = ({ faults, outcome }: PlaneReport) => faults.length === 0 && outcome?.kind !== "stopped";
  return reports.every(isSound) ? EXIT.done : EXIT.checkFailed;
}
