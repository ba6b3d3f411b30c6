// What a new design holds of the maker's own: values from the command line, then answers to what is still open.
import { knownPaths, PURPOSE_NAMES, PURPOSES, type Purpose, rowAt, type Starter } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import { formatLimit, parseLength, type Units } from "@lamplane/parameters/units";
import { unknownParameterError } from "./design-file.ts";
import { InputRefused, type Prompts } from "./io.ts";
import { ARGUMENT_FAULT } from "./words/commands.ts";
import { NEW, NEW_QUESTION } from "./words/new.ts";

export type StartValues = Readonly<Record<string, string>>;
type QuestionPath = keyof typeof NEW_QUESTION;

/** "KEY=VALUE" of the command line, by key. @throws InputRefused for another form, an unknown key, the unit */
export function valuesOfOptions(changes: readonly string[]): StartValues {
  return Object.fromEntries(changes.map(startValue));
}

function startValue(change: string): [string, string] {
  const [, path, text] = /^([^=]+)=(.+)$/s.exec(change) ?? [];
  if (path === undefined || text === undefined) throw new InputRefused(ARGUMENT_FAULT.keyValue({ given: change }));
  if (path === "units")
    throw new InputRefused(ARGUMENT_FAULT.option({ option: "--with units", fault: NEW.unitsApart }));
  if (!knownPaths().includes(path)) throw unknownParameterError(path);
  return [path, text];
}

interface Known {
  readonly units?: Units | undefined;
  readonly for?: Purpose | undefined;
}

/** Asks for everything that is not given yet. @throws InputRefused where a question is broken off */
export async function askForStart(prompts: Prompts, known: Known, given: StartValues): Promise<Omit<Starter, "name">> {
  const purpose = known.for ?? (await askPurpose(prompts));
  const units = known.units ?? (await askUnits(prompts));
  const ask = (paths: readonly QuestionPath[], values: StartValues) => askLengths(prompts, units, paths, values);
  const iron = await ask(["iron.width", "iron.thickness", "iron.length"], given);
  const capIron = await askCapIron(prompts, ask, iron);
  return { purpose, units, values: await askBillet(prompts, ask, capIron) };
}

type AskLengths = (paths: readonly QuestionPath[], values: StartValues) => Promise<StartValues>;

/** A single iron has no thickness of a cap iron; one whose screw does not stand out needs no recess. */
async function askCapIron(prompts: Prompts, ask: AskLengths, values: StartValues): Promise<StartValues> {
  if (values["capIron.thickness"] === undefined && !(await prompts.confirm(NEW.hasCapIron)))
    return { ...values, "capIron.thickness": "0" };
  if (Number(values["capIron.thickness"]) === 0) return values;
  return ask(
    ["capIron.thickness", "capIron.screwHead.diameter", "capIron.screwHead.height", "capIron.screwHead.fromEdge"],
    values,
  );
}

async function askBillet(prompts: Prompts, ask: AskLengths, values: StartValues): Promise<StartValues> {
  const sides = ["billet.length", "billet.width", "billet.height"] as const;
  if (sides.some((side) => values[side] !== undefined) || (await prompts.confirm(NEW.hasBillet)))
    return ask(sides, values);
  return { ...values, ...Object.fromEntries(sides.map((side) => [side, "0"])) };
}

async function askLengths(
  prompts: Prompts,
  units: Units,
  paths: readonly QuestionPath[],
  values: StartValues,
): Promise<StartValues> {
  const answers: Record<string, string> = { ...values };
  for (const path of paths)
    answers[path] ??= await prompts.text(NEW_QUESTION[path], "", (answer) => lengthFault(path, units, answer));
  return answers;
}

/** What is wrong with a length that was typed; undefined where nothing is. */
function lengthFault(path: string, units: Units, answer: string): string | undefined {
  const { min, max } = rowAt(path) as NumberRow;
  const read = parseLength(answer, units);
  if ("fault" in read) return read.fault;
  if (read.value >= min && read.value <= max) return undefined;
  const [is, least, most] = [read.value, min, max].map((mm) => formatLimit(mm, units)) as [string, string, string];
  return NEW.limits({ read: is, min: least, max: most });
}

const askPurpose = (prompts: Prompts): Promise<Purpose> =>
  prompts.choose(
    NEW.purpose,
    PURPOSE_NAMES.map((value) => ({ value, label: PURPOSES[value].title })),
  );

const askUnits = (prompts: Prompts): Promise<Units> =>
  prompts.choose<Units>(NEW.units, [
    { value: "mm", label: NEW.mm },
    { value: "in", label: NEW.in },
  ]);
