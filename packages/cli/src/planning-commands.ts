// The commands that plan and make a plane, as they are typed; each is loaded when it is asked for.
import { openDesign } from "./named-design.ts";
import { type AddCommand, allOption, FILE, JSON_OUT, OWN_FILE, requireSingle, SHOP, WITH } from "./options.ts";
import { requireFileName } from "./standard-input.ts";
import { ARGUMENTS, COMMANDS, OPTIONS } from "./words/commands.ts";

const addNew: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "new FILE",
    COMMANDS.new,
    async (y) => {
      const { PURPOSE_NAMES } = await import("@lamplane/parameters/design");
      return y
        .positional("FILE", OWN_FILE)
        .option("for", { choices: PURPOSE_NAMES, describe: OPTIONS.for })
        .option("units", { choices: ["mm", "in"] as const, describe: OPTIONS.units })
        .option("with", { ...WITH, describe: OPTIONS.newWith })
        .option("all", allOption(OPTIONS.allParameters))
        .option("shop", { type: "boolean", default: false, describe: OPTIONS.newShop });
    },
    async (a) => {
      const { newCommand } = await import("./commands/new.ts");
      requireFileName("new", a.FILE);
      setExitCode(await newCommand(io, a.FILE, a));
    },
  );

const addCheck: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "check FILE",
    COMMANDS.check,
    (y) =>
      y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("all", allOption(OPTIONS.all)),
    async (a) => {
      const { checkCommand } = await import("./commands/check.ts");
      const { nestedReport, routerReport } = await import("./router-text.ts");
      const design = await openDesign(io, a);
      const reports = { router: await routerReport(design), nested: await nestedReport(design) };
      setExitCode(checkCommand(io, design, { json: a.json, all: a.all }, reports));
    },
  );

const addFigures: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "figures FILE",
    COMMANDS.figures,
    (y) =>
      y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("all", allOption(OPTIONS.formulas)),
    async (a) => {
      const { figuresCommand } = await import("./commands/figures.ts");
      setExitCode(
        figuresCommand(io, await openDesign(io, a), {
          json: a.json,
          all: a.all,
        }),
      );
    },
  );

const addStock: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "stock FILE",
    COMMANDS.stock,
    (y) =>
      y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("all", allOption(OPTIONS.allPieces)),
    async (a) => {
      const { stockCommand } = await import("./commands/stock.ts");
      setExitCode(stockCommand(io, await openDesign(io, a), a));
    },
  );

const addBuild: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "build FILE",
    COMMANDS.build,
    (y) =>
      y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("out", {
          type: "string",
          default: ".",
          requiresArg: true,
          describe: OPTIONS.out,
        })
        .option("only", {
          type: "string",
          requiresArg: true,
          default: "parts,jigs,sheets,router",
          defaultDescription: "all",
          describe: OPTIONS.only,
        }),
    async (a) => {
      const design = await openDesign(io, a);
      const { buildCommand } = await import("./commands/build.ts");
      const [out, only] = [requireSingle("out", a.out), requireSingle("only", a.only)];
      setExitCode(await buildCommand(io, design, { out, only, json: a.json }));
    },
  );

const addClass: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "class ROSTER",
    COMMANDS.class,
    (y) =>
      y
        .positional("ROSTER", { type: "string", demandOption: true, describe: ARGUMENTS.roster })
        .option("base", { type: "string", requiresArg: true, describe: OPTIONS.base })
        .option("shop", SHOP)
        .option("out", { type: "string", default: "packs", requiresArg: true, describe: OPTIONS.classOut })
        .option("groups", { type: "number", requiresArg: true, describe: OPTIONS.groups })
        .option("plan", { type: "boolean", default: false, describe: OPTIONS.plan })
        .option("status", { type: "boolean", default: false, describe: OPTIONS.status })
        .option("json", JSON_OUT),
    async (a) => {
      const { classCommand, parseGroups } = await import("./commands/class.ts");
      requireFileName("class", a.ROSTER);
      const [base, out] = [requireSingle("base", a.base), requireSingle("out", a.out)];
      const shop = requireSingle("shop", a.shop);
      setExitCode(await classCommand(io, a.ROSTER, { ...a, base, shop, out, groups: parseGroups(a.groups) }));
    },
  );

const addSweep: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "sweep FILE",
    COMMANDS.sweep,
    (y) =>
      y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("vary", { ...WITH, describe: OPTIONS.vary })
        .option("figure", { ...WITH, describe: OPTIONS.figure })
        .option("out", { type: "string", requiresArg: true, describe: OPTIONS.table })
        .option("plots", { type: "string", requiresArg: true, describe: OPTIONS.plots }),
    async (a) => {
      const { sweepCommand } = await import("./commands/sweep.ts");
      const [out, plots] = [requireSingle("out", a.out), requireSingle("plots", a.plots)];
      setExitCode(
        await sweepCommand(io, await openDesign(io, a), {
          vary: a.vary,
          figures: a.figure,
          out,
          plots,
        }),
      );
    },
  );

const addExplain: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "explain [KEY]",
    COMMANDS.explain,
    (y) => y.positional("KEY", { type: "string", describe: ARGUMENTS.key }).option("all", allOption(OPTIONS.allNames)),
    async (a) => {
      const { explainCommand } = await import("./commands/explain.ts");
      setExitCode(explainCommand(io, { name: a.KEY, all: a.all }));
    },
  );

const addView: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "view [FILE]",
    COMMANDS.view,
    (y) =>
      y
        .positional("FILE", { type: "string", describe: ARGUMENTS.fileOrExamples })
        .option("shop", SHOP)
        .option("base", { type: "string", requiresArg: true, describe: OPTIONS.viewBase })
        .option("out", { type: "string", default: "packs", requiresArg: true, describe: OPTIONS.viewOut })
        .option("port", {
          type: "number",
          default: 0,
          requiresArg: true,
          describe: OPTIONS.port,
        }),
    async (a) => {
      const { viewCommand } = await import("./commands/view.ts");
      if (a.FILE !== undefined) requireFileName("view", a.FILE);
      const [shop, base, out] = [
        requireSingle("shop", a.shop),
        requireSingle("base", a.base),
        requireSingle("out", a.out),
      ];
      setExitCode(await viewCommand(io, a.FILE, { port: a.port, shop, base, out }));
    },
  );

/** The line with the planner's commands added to it. */
export const addPlanningCommands: AddCommand = (line, context) =>
  [addNew, addCheck, addFigures, addStock, addBuild, addClass, addSweep, addExplain, addView].reduce(
    (to, add) => add(to, context),
    line,
  );
