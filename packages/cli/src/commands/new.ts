// `lamplane new`: writes a commented design to begin with, never over anything, and says how it stands.
import { writeFileSync } from "node:fs";
import { basename, extname } from "node:path";
import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, passedChecks } from "@lamplane/bench/checks";
import { toWriteError } from "@lamplane/export/write-error";
import {
  PURPOSE_NAMES,
  PURPOSES,
  type Purpose,
  type Starter,
  shortStarter,
  starterDesign,
  starterShop,
} from "@lamplane/parameters/design";
import { TABLE } from "@lamplane/parameters/table";
import { formatLimit, parseLength, type Units } from "@lamplane/parameters/units";
import { loadDesign } from "../design-file.ts";
import { findingsText } from "../findings-text.ts";
import { EXIT, type Exit, InputRefused, type Io, type Prompts } from "../io.ts";
import { CHECK } from "../words/check.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { NEW } from "../words/reports.ts";

export interface NewOptions {
  readonly units?: Units | undefined;
  readonly for?: Purpose | undefined;
  /** Every parameter, not the few that a maker looks at first. */
  readonly all: boolean;
  /** A shop file, not a design. */
  readonly shop?: boolean;
}

/** At a terminal asks for what was not given. @throws InputRefused for an empty name, WriteError where something is there already */
export async function newCommand(io: Io, file: string, options: NewOptions): Promise<Exit> {
  if (file === "") throw new InputRefused(ARGUMENT_FAULT.emptyNew);
  if (options.shop) return newShop(io, file, options);
  const starter = { name: designName(file), ...(io.prompts ? await ask(io.prompts, options) : unasked(options)) };
  const text = options.all ? starterDesign(starter.name, starter.units, starter) : shortStarter(starter);
  writeNew(file, text);
  const design = loadDesign(io, file);
  const isOwn = starter.iron !== undefined;
  const plane = asBuiltPlane(design);
  io.out(`${NEW.written({ file, isOwn })}\n${NEW.verdict}\n${findingsText(design, checkPlane(plane))}`);
  io.out(`${CHECK.passed({ count: passedChecks(plane).length })}\n`);
  return EXIT.done;
}

function newShop(io: Io, file: string, { units = "mm", for: purpose, all }: NewOptions): Exit {
  const meant = purpose !== undefined ? "--for" : all ? "--all" : undefined;
  if (meant !== undefined) throw new InputRefused(ARGUMENT_FAULT.notWithShop({ option: meant }));
  writeNew(file, starterShop(units));
  io.out(`${NEW.shop({ file })}\n`);
  return EXIT.done;
}

function writeNew(file: string, text: string): void {
  try {
    writeFileSync(file, text, { flag: "wx" });
  } catch (error) {
    throw toWriteError(file, error);
  }
}

function designName(file: string): string {
  const stem = basename(file, extname(file));
  return TABLE.name.pattern!.regex.test(stem) && stem.length <= TABLE.name.maxLength ? stem : TABLE.name.default;
}

const unasked = ({ units = "mm", for: purpose = "smoother" }: NewOptions): Omit<Starter, "name"> => ({
  units,
  purpose,
});

async function ask(prompts: Prompts, options: NewOptions): Promise<Omit<Starter, "name">> {
  const purpose =
    options.for ??
    (await prompts.choose(
      NEW.purpose,
      PURPOSE_NAMES.map((value) => ({ value, label: PURPOSES[value].title })),
    ));
  const units =
    options.units ??
    (await prompts.choose<Units>(NEW.units, [
      { value: "mm", label: NEW.mm },
      { value: "in", label: NEW.in },
    ]));
  const width = await prompts.text(NEW.width, "", faultOf("width", units));
  const thickness = await prompts.text(NEW.thickness, "", faultOf("thickness", units));
  return { purpose, units, iron: { width, thickness } };
}

/** What is wrong with a length that was typed for the iron; undefined where nothing is. */
const faultOf =
  (key: "width" | "thickness", units: Units) =>
  (answer: string): string | undefined => {
    const { min, max } = TABLE.iron[key];
    const read = parseLength(answer, units);
    if ("fault" in read) return read.fault;
    if (read.value >= min && read.value <= max) return undefined;
    const [is, least, most] = [read.value, min, max].map((mm) => formatLimit(mm, units)) as [string, string, string];
    return NEW.limits({ read: is, min: least, max: most });
  };
