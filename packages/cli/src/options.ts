// What several commands accept, told once.
import { InputRefused } from "./io.ts";

export const FILE = {
  type: "string",
  demandOption: true,
  describe: "design file (YAML); - reads the standard input",
} as const;
/** A design file that is written to. */
export const OWN_FILE = { type: "string", demandOption: true, describe: "design file (YAML)" } as const;
export const JSON_OUT = {
  type: "boolean",
  default: false,
  describe: "print JSON, lengths in mm and angles in degrees",
} as const;
export const WITH = {
  type: "string",
  array: true,
  nargs: 1,
  default: [] as string[],
  describe: "change a parameter for this run: KEY=VALUE",
} as const;

/** The text of an option. yargs makes a list of one that is given twice. @throws InputRefused for such a list, and for no text */
export function requireSingle<T extends string | undefined>(name: string, text: T): T {
  if (text === "") throw new InputRefused(`--${name} is empty; write a value behind it`);
  if (!Array.isArray(text)) return text;
  throw new InputRefused(`--${name} is given ${text.length} times; give it once`);
}
