// The command: what it accepts, and how every end of it becomes an exit code and a message, never a stack trace.
import { CouldNotWrite } from "@lamplane/export";
import { RUNS } from "@lamplane/parameters/bench";
import yargs, { type Argv } from "yargs";
import { check } from "./commands/check.ts";
import { explain } from "./commands/explain.ts";
import { figures } from "./commands/figures.ts";
import { measured } from "./commands/measured.ts";
import { newDesign } from "./commands/new.ts";
import { next } from "./commands/next.ts";
import { stock } from "./commands/stock.ts";
import { tolerance } from "./commands/tolerance.ts";
import { designFrom } from "./design-file.ts";
import { EXIT, type Exit, InputRefused, type Io, PROCESS_IO } from "./io.ts";
import { VERSION } from "./version.ts";

export { EXIT, InputRefused, type Io } from "./io.ts";

/** Runs the command with its arguments; resolves to the exit code. */
export async function main(args: readonly string[], io: Io = PROCESS_IO): Promise<Exit> {
  let exit: Exit = EXIT.done;
  const settle = (code: Exit) => {
    exit = code;
  };
  try {
    const text = await parsed(commandLine(io, settle), args);
    if (text !== "") io.out(`${text}\n`);
    return exit;
  } catch (error) {
    return told(io, error);
  }
}

/** yargs tells help and version through its callback; what it refuses comes back as a refusal. */
function parsed(line: Argv, args: readonly string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    line
      .parseAsync([...args], {}, (error, _argv, output) => {
        if (error) reject(error);
        text = output;
      })
      .then(() => resolve(text), reject);
  });
}

function told(io: Io, error: unknown): Exit {
  if (error instanceof InputRefused) {
    io.err(`${error.message}\n`);
    return EXIT.inputRefused;
  }
  if (error instanceof CouldNotWrite) {
    io.err(`${error.message}\n`);
    return EXIT.couldNotWrite;
  }
  io.err(
    `lamplane ${VERSION} has a bug: ${error instanceof Error ? error.message : String(error)}\nPlease report it with the design file. Nothing of yours was changed.\n`,
  );
  return EXIT.ourBug;
}

/** What yargs says of arguments, in words that name the thing that is missing. */
const plainly = (message: string): string =>
  message.startsWith("Not enough non-option") ? "Name the design file." : message;

const FILE = { type: "string", demandOption: true, describe: "design file (YAML)" } as const;
const JSON_OUT = {
  type: "boolean",
  default: false,
  describe: "print JSON, lengths in mm and angles in degrees",
} as const;
const WITH = {
  type: "string",
  array: true,
  nargs: 1,
  default: [] as string[],
  describe: "change a parameter for this run: KEY=VALUE",
} as const;

function commandLine(io: Io, settle: (code: Exit) => void): Argv {
  return yargs()
    .scriptName("lamplane")
    .usage("$0 COMMAND: everything needed to build a laminated wooden hand plane, from one design file")
    .command(
      "new FILE",
      "write a commented starter design",
      (y) =>
        y.positional("FILE", FILE).option("units", {
          choices: ["mm", "in"] as const,
          default: "mm" as const,
          describe: "unit of bare lengths",
        }),
      (a) => settle(newDesign(io, a.FILE, a.units)),
    )
    .command(
      "check FILE",
      "every check with its figure, limit and why",
      (y) => y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT),
      (a) => settle(check(io, designFrom(a.FILE, a.with), a.json)),
    )
    .command(
      "figures FILE",
      "every figure with unit, formula and source",
      (y) => y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT),
      (a) => settle(figures(io, designFrom(a.FILE, a.with), a.json)),
    )
    .command(
      "stock FILE",
      "how to cut the wood: billet, saw lines, marks, offcut and stock list",
      (y) => y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT),
      (a) => settle(stock(io, designFrom(a.FILE, a.with), a.json)),
    )
    .command(
      "build FILE",
      "write the whole pack",
      (y) =>
        y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT).option("out", {
          type: "string",
          default: ".",
          requiresArg: true,
          describe: "folder that the pack's folder goes into",
        }),
      async (a) => {
        const design = designFrom(a.FILE, a.with);
        const { build } = await import("./commands/build.ts");
        settle(await build(io, design, a.out, a.json));
      },
    )
    .command(
      "next FILE",
      "where the build stands and what to do now",
      (y) => y.positional("FILE", FILE).option("json", JSON_OUT),
      (a) => settle(next(io, designFrom(a.FILE), a.FILE, a.json)),
    )
    .command(
      "measured FILE [VALUES..]",
      "write what came out at the bench into the file: coreWidth=49.7",
      (y) =>
        y
          .positional("FILE", FILE)
          .positional("VALUES", { type: "string", array: true, default: [] as string[], describe: "KEY=VALUE" })
          .option("json", JSON_OUT),
      (a) => settle(measured(io, a.FILE, a.VALUES, a.json)),
    )
    .command(
      "sweep FILE",
      "many designs at once, as a table: --vary bed.angle=43..57:0.5",
      (y) =>
        y
          .positional("FILE", FILE)
          .option("with", WITH)
          .option("vary", { ...WITH, describe: "KEY=FROM..TO:STEP or KEY=VALUE,VALUE; may be given again" })
          .option("figure", { ...WITH, describe: "figure to show; may be given again" })
          .option("out", { type: "string", requiresArg: true, describe: "file for the table (CSV)" }),
      async (a) => {
        const { sweep } = await import("./commands/sweep.ts");
        settle(await sweep(io, designFrom(a.FILE, a.with), { vary: a.vary, figures: a.figure, out: a.out }));
      },
    )
    .command(
      "tolerance FILE",
      "which step decides the mouth, and how well each must be done",
      (y) =>
        y
          .positional("FILE", FILE)
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("seed", { type: "number", requiresArg: true, default: 1, describe: "same seed, same runs" })
          .option("runs", { type: "number", requiresArg: true, default: RUNS, describe: "planes made by chance" }),
      (a) => settle(tolerance(io, designFrom(a.FILE, a.with), a)),
    )
    .command(
      "explain [KEY]",
      "what a parameter is, its limits and where they come from",
      (y) => y.positional("KEY", { type: "string", describe: "parameter or section, such as bed.angle or bed" }),
      (a) => settle(explain(io, a.KEY)),
    )
    .command(
      "view [FILE]",
      "the drawing sheet in a browser on this machine, following the file as it changes",
      (y) =>
        y
          .positional("FILE", { type: "string", describe: "design file (YAML); without one, the examples" })
          .option("port", {
            type: "number",
            default: 0,
            requiresArg: true,
            describe: "port on 127.0.0.1; 0 takes a free one",
          }),
      async (a) => {
        const { view } = await import("./commands/view.ts");
        settle(await view(io, a.FILE, a.port));
      },
    )
    .demandCommand(1, "Name a command.")
    .strictCommands()
    .strict()
    .version(VERSION)
    .help()
    .wrap(100)
    .exitProcess(false)
    .fail((message, error) => {
      throw error ?? new InputRefused(`${plainly(message)}\n\`lamplane --help\` lists the commands.`);
    })
    .epilogue("Exit codes: 0 done, 1 a check failed, 2 the input was refused, 3 could not write, 4 our bug.");
}
