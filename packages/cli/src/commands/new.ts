// `lamplane new`: writes a commented design to begin with, never over anything, and says how it stands.
import { writeFileSync } from "node:fs";
import { basename, extname } from "node:path";
import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, passedChecks } from "@lamplane/bench/checks";
import { toWriteError } from "@lamplane/export/write-error";
import {
  type Purpose,
  type Starter,
  shortStarter,
  starterDesign,
  starterShop,
  unmeasuredPaths,
} from "@lamplane/parameters/design";
import { TABLE } from "@lamplane/parameters/table";
import type { Units } from "@lamplane/parameters/units";
import { decodeDesignBytes, loadDesign } from "../design-file.ts";
import { findingsText } from "../findings-text.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { askForStart, valuesOfOptions } from "../start-values.ts";
import { CHECK } from "../words/check.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { NEW } from "../words/new.ts";

export interface NewOptions {
  readonly units?: Units | undefined;
  readonly for?: Purpose | undefined;
  /** Every parameter, not the few that a maker looks at first. */
  readonly all: boolean;
  /** "KEY=VALUE" for each value that the maker has measured already. */
  readonly with?: readonly string[];
  /** A shop file, not a design. */
  readonly shop?: boolean;
}

/**
 * At a terminal asks for what was not given.
 * @throws InputRefused for an empty name or a value that a design cannot hold, WriteError where something is there already
 */
export async function newCommand(io: Io, file: string, options: NewOptions): Promise<Exit> {
  if (file === "") throw new InputRefused(ARGUMENT_FAULT.emptyNew);
  if (options.shop) return newShop(io, file, options);
  const starter = { name: designName(file), ...(await startOf(io, options)) };
  const text = options.all ? starterDesign(starter.name, starter.units, starter) : shortStarter(starter);
  decodeDesignBytes(new TextEncoder().encode(text), file);
  writeNew(file, text);
  const design = loadDesign(io, file);
  const isMeasured = unmeasuredPaths(starter).length === 0;
  const plane = asBuiltPlane(design);
  io.out(`${NEW.written({ file, isMeasured })}\n${NEW.verdict}\n${findingsText(design, checkPlane(plane))}`);
  io.out(`${CHECK.passed({ count: passedChecks(plane).length })}\n`);
  return EXIT.done;
}

async function startOf(io: Io, options: NewOptions): Promise<Omit<Starter, "name">> {
  const values = valuesOfOptions(options.with ?? []);
  if (io.prompts) return askForStart(io.prompts, options, values);
  return { units: options.units ?? "mm", purpose: options.for ?? "smoother", values };
}

function newShop(io: Io, file: string, options: NewOptions): Exit {
  const { units = "mm" } = options;
  const meant = designOption(options);
  if (meant !== undefined) throw new InputRefused(ARGUMENT_FAULT.notWithShop({ option: meant }));
  writeNew(file, starterShop(units));
  io.out(`${NEW.shop({ file })}\n`);
  return EXIT.done;
}

const designOption = ({ for: purpose, all, with: changes = [] }: NewOptions): string | undefined =>
  purpose !== undefined ? "--for" : all ? "--all" : changes.length > 0 ? "--with" : undefined;

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
