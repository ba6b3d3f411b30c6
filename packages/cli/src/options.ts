// What several commands accept, and how a command is added to the line.
import type { Argv } from "yargs";
import { type Exit, InputRefused, type Io } from "./io.ts";
import { ARGUMENT_FAULT, ARGUMENTS, OPTIONS } from "./words/commands.ts";

/** Adds one command, or several, to the command line. */
export type AddCommand = (line: Argv, context: CommandContext) => Argv;
interface CommandContext {
  readonly io: Io;
  readonly setExitCode: (code: Exit) => void;
}

export const FILE = { type: "string", demandOption: true, describe: ARGUMENTS.file } as const;
/** A design file that is written to. */
export const OWN_FILE = { type: "string", demandOption: true, describe: ARGUMENTS.ownFile } as const;
export const JSON_OUT = {
  type: "boolean",
  default: false,
  describe: OPTIONS.json,
} as const;
/** @param describe what it adds */
export const allOption = <Text extends string>(describe: Text) =>
  ({ type: "boolean", default: false, describe }) as const;
export const WITH = {
  type: "string",
  array: true,
  nargs: 1,
  default: [] as string[],
  describe: OPTIONS.with,
} as const;

/** A shop file in the place of the one that the design names. */
export const SHOP = { type: "string", requiresArg: true, describe: OPTIONS.shop } as const;

/** The text of an option. yargs makes a list of one that is given twice. @throws InputRefused for such a list, and for no text */
export function requireSingle<T extends string | undefined>(name: string, text: T): T {
  if (text === "") throw new InputRefused(ARGUMENT_FAULT.emptyOption({ name }));
  if (!Array.isArray(text)) return text;
  throw new InputRefused(ARGUMENT_FAULT.twice({ name, count: text.length }));
}
