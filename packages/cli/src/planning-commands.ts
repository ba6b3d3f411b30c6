// The commands that plan and make a plane, as they are typed; each is loaded when it is asked for.
import type { Argv } from "yargs";
import { loadDesign } from "./design-file.ts";
import type { Exit, Io } from "./io.ts";
import { FILE, JSON_OUT, requireSingle, WITH } from "./options.ts";

/** The line with the planner's commands added to it. */
export const addPlanningCommands = (line: Argv, io: Io, setExitCode: (code: Exit) => void): Argv =>
  line
    .command(
      "new FILE",
      "write a commented starter design",
      (y) =>
        y.positional("FILE", FILE).option("units", {
          choices: ["mm", "in"] as const,
          default: "mm" as const,
          describe: "unit of bare lengths",
        }),
      async (a) => {
        const { newCommand } = await import("./commands/new.ts");
        setExitCode(newCommand(io, a.FILE, a.units));
      },
    )
    .command(
      "check FILE",
      "every check with its figure, limit and why",
      (y) => y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT),
      async (a) => {
        const { checkCommand } = await import("./commands/check.ts");
        setExitCode(checkCommand(io, loadDesign(io, a.FILE, a.with), a.json));
      },
    )
    .command(
      "figures FILE",
      "every figure with unit, formula and source",
      (y) => y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT),
      async (a) => {
        const { figuresCommand } = await import("./commands/figures.ts");
        setExitCode(figuresCommand(io, loadDesign(io, a.FILE, a.with), a.json));
      },
    )
    .command(
      "stock FILE",
      "how to cut the wood: billet, saw lines, marks, offcut and stock list",
      (y) => y.positional("FILE", FILE).option("with", WITH).option("json", JSON_OUT),
      async (a) => {
        const { stockCommand } = await import("./commands/stock.ts");
        setExitCode(stockCommand(io, loadDesign(io, a.FILE, a.with), a.json));
      },
    )
    .command(
      "build FILE",
      "write the whole pack",
      (y) =>
        y
          .positional("FILE", FILE)
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("out", {
            type: "string",
            default: ".",
            requiresArg: true,
            describe: "folder that the pack's folder goes into",
          })
          .option("only", {
            type: "string",
            requiresArg: true,
            default: "parts,jigs,sheets",
            describe: "what to make of parts, jigs and sheets, with commas between",
          }),
      async (a) => {
        const design = loadDesign(io, a.FILE, a.with);
        const { buildCommand, parseSections } = await import("./commands/build.ts");
        setExitCode(
          await buildCommand(
            io,
            design,
            requireSingle("out", a.out),
            a.json,
            parseSections(requireSingle("only", a.only)),
          ),
        );
      },
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
          .option("out", { type: "string", requiresArg: true, describe: "file for the table (CSV)" })
          .option("plots", { type: "string", requiresArg: true, describe: "folder for a plot of each figure (SVG)" }),
      async (a) => {
        const { sweepCommand } = await import("./commands/sweep.ts");
        const [out, plots] = [requireSingle("out", a.out), requireSingle("plots", a.plots)];
        setExitCode(
          await sweepCommand(io, loadDesign(io, a.FILE, a.with), { vary: a.vary, figures: a.figure, out, plots }),
        );
      },
    )
    .command(
      "explain [KEY]",
      "what a parameter is, its limits and where they come from",
      (y) => y.positional("KEY", { type: "string", describe: "parameter or section, such as bed.angle or bed" }),
      async (a) => {
        const { explainCommand } = await import("./commands/explain.ts");
        setExitCode(explainCommand(io, a.KEY));
      },
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
        const { viewCommand } = await import("./commands/view.ts");
        setExitCode(await viewCommand(io, a.FILE, a.port));
      },
    );
