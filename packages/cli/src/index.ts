// The command: what it accepts, and how every end of it becomes an exit code and a message, never a stack trace.
import { WriteError } from "@lamplane/export/write-error";
import yargs, { type Argv } from "yargs";
import { addBenchCommands } from "./bench-commands.ts";
import { BrokenPipe, EXIT, type Exit, InputRefused, type Io, processIo } from "./io.ts";
import { addPlanningCommands } from "./planning-commands.ts";
import { terminalPrompts } from "./prompts.ts";
import { STANDARD_INPUT } from "./standard-input.ts";
import { VERSION } from "./version.ts";
import { ARGUMENT_FAULT, BUG, EXIT_CODES, USAGE } from "./words/commands.ts";

export { EXIT, InputRefused, type Io } from "./io.ts";

/** Runs the command with its arguments; resolves to the exit code. */
export async function main(
  args: readonly string[],
  io: Io = { ...processIo(), prompts: terminalPrompts() },
): Promise<Exit> {
  let exit: Exit = EXIT.done;
  const setExitCode = (code: Exit) => {
    exit = code;
  };
  try {
    const text = await parseCommandLine(defineCommandLine(io, setExitCode), args);
    if (text !== "") io.out(`${text}\n`);
    await io.flush?.();
    return exit;
  } catch (error) {
    return error instanceof BrokenPipe ? exit : reportError(io, error);
  }
}

/** yargs tells help and version through its callback; what it refuses comes back as a refusal. */
function parseCommandLine(line: Argv, args: readonly string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    line
      .parseAsync(args.map(nameOfDash), {}, (error, _argv, output) => {
        if (error) reject(error);
        text = shortenHelp(output);
      })
      .then(() => resolve(text), reject);
  });
}

/** A command's help without the types and defaults that go without saying, and without the options that every command has. */
const shortenHelp = (text: string): string =>
  text
    .replace(/\s*\[(?:boolean|string|number|array|required|default: (?:false|\[\]))\]/g, "")
    .replace(/^ +--(?:version|help) .*\n/gm, "")
    .replace(/\n{2,}/g, "\n\n")
    .replace(/^Positionals:\n/m, "")
    .replace(/\nOptions:\n+(?=\S|$)/, "\n");

/** yargs takes a lone dash in a file's place for an empty text. */
const nameOfDash = (arg: string): string => (arg === "-" ? STANDARD_INPUT : arg);

function reportError(io: Io, error: unknown): Exit {
  if (error instanceof InputRefused) {
    io.err(`${sanitizeMessage(error.message)}\n`);
    return EXIT.inputRefused;
  }
  if (error instanceof WriteError) {
    io.err(`${sanitizeMessage(error.message)}\n`);
    return EXIT.couldNotWrite;
  }
  io.err(`${BUG({ version: VERSION, message: error instanceof Error ? error.message : String(error) })}\n`);
  return EXIT.ourBug;
}

/** A message may quote what was typed or found: nothing in it steers a terminal or turns what is read. */
const sanitizeMessage = (message: string): string => message.replace(/(?!\n)[\p{C}\u2028\u2029]/gu, "�");

/** What yargs says of arguments, in words that name the thing that is missing. */
const rephraseYargsMessage = (message: string): string =>
  message.startsWith("Not enough non-option") ? ARGUMENT_FAULT.noFile : message;

function defineCommandLine(io: Io, setExitCode: (code: Exit) => void): Argv {
  const line = yargs()
    .scriptName("lamplane")
    .parserConfiguration({ "dot-notation": false }) // `--with.a=b` is no option, and no way into an object
    .usage(USAGE);
  const context = { io, setExitCode };
  return addBenchCommands(addPlanningCommands(line, context), context)
    .demandCommand(1, ARGUMENT_FAULT.noCommand)
    .strictCommands()
    .strict()
    .version(VERSION)
    .help()
    .wrap(80)
    .exitProcess(false)
    .fail((message, error) => {
      // A message is what yargs says of the arguments; without one, the error is the command's own.
      if (!message || error instanceof InputRefused) throw error;
      throw new InputRefused(`${rephraseYargsMessage(message)}\n${ARGUMENT_FAULT.help}`);
    })
    .epilogue(EXIT_CODES);
}
