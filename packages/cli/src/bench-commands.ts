// The commands used beside the bench, as they are typed; each is loaded when it is asked for.
import { InputRefused } from "./io.ts";
import { openDesign } from "./named-design.ts";
import { type AddCommand, allOption, FILE, JSON_OUT, OWN_FILE, requireSingle, SHOP, WITH } from "./options.ts";
import { requireFileName, STANDARD_INPUT } from "./standard-input.ts";
import { ARGUMENT_FAULT, ARGUMENTS, COMMANDS, OPTIONS } from "./words/commands.ts";

/** A length as typed; read in the design's unit once the design is known. */
const LENGTH = { type: "string", requiresArg: true } as const;

const addMouth: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "mouth FILE",
    COMMANDS.mouth,
    (y) =>
      y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("seen", { ...LENGTH, describe: OPTIONS.seen })
        .option("left", { ...LENGTH, describe: OPTIONS.left })
        .option("right", { ...LENGTH, describe: OPTIONS.right })
        .option("wanted", { ...LENGTH, describe: OPTIONS.wanted })
        .option("shaving", {
          ...LENGTH,
          describe: OPTIONS.shaving,
        })
        .option("all", allOption(OPTIONS.allRows)),
    async (a) => {
      const { mouthCommand } = await import("./commands/mouth.ts");
      const { seen, left, right, wanted, shaving } = a;
      const limits = {
        seen: requireSingle("seen", seen),
        left: requireSingle("left", left),
        right: requireSingle("right", right),
        wanted: requireSingle("wanted", wanted),
        shaving: requireSingle("shaving", shaving),
      };
      setExitCode(
        mouthCommand(io, await openDesign(io, a), {
          ...limits,
          json: a.json,
          all: a.all,
        }),
      );
    },
  );

const addSurvey: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "survey FILE [READINGS]",
    COMMANDS.survey,
    (y) =>
      y
        .positional("FILE", FILE)
        .positional("READINGS", { type: "string", describe: ARGUMENTS.readings })
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("blank", { type: "boolean", default: false, describe: OPTIONS.blank })
        .option("all", allOption(OPTIONS.allRanges)),
    async (a) => {
      const { surveyCommand } = await import("./commands/survey.ts");
      if (a.FILE === STANDARD_INPUT && a.READINGS === STANDARD_INPUT)
        throw new InputRefused(ARGUMENT_FAULT.oneStandardInput);
      setExitCode(
        surveyCommand(io, await openDesign(io, a), {
          ...a,
          readings: a.READINGS,
        }),
      );
    },
  );

const addNext: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "next FILE",
    COMMANDS.next,
    (y) => y.positional("FILE", FILE).option("shop", SHOP).option("json", JSON_OUT),
    async (a) => {
      const { nextCommand } = await import("./commands/next.ts");
      const file = a.FILE === STANDARD_INPUT ? "FILE" : a.FILE;
      setExitCode(nextCommand(io, await openDesign(io, a), { file, json: a.json }));
    },
  );

const addMeasured: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "measured FILE [VALUES..]",
    COMMANDS.measured,
    (y) =>
      y
        .positional("FILE", OWN_FILE)
        .positional("VALUES", { type: "string", array: true, default: [] as string[], describe: ARGUMENTS.values })
        .option("read-twice", {
          type: "boolean",
          default: false,
          describe: OPTIONS.readTwice,
        })
        .option("skip", {
          type: "boolean",
          default: false,
          describe: OPTIONS.skip,
        })
        .option("shop", SHOP)
        .option("undo", { type: "boolean", default: false, describe: OPTIONS.undo })
        .option("json", JSON_OUT),
    async (a) => {
      const { measuredCommand } = await import("./commands/measured.ts");
      requireFileName("measured", a.FILE);
      setExitCode(await measuredCommand(io, a.FILE, a.VALUES, { ...a, shop: requireSingle("shop", a.shop) }));
    },
  );

const addTolerance: AddCommand = (line, { io, setExitCode }) =>
  line.command(
    "tolerance FILE",
    COMMANDS.tolerance,
    async (y) => {
      const { RUNS } = await import("@lamplane/bench");
      return y
        .positional("FILE", FILE)
        .option("with", WITH)
        .option("shop", SHOP)
        .option("json", JSON_OUT)
        .option("seed", { type: "number", requiresArg: true, default: 1, describe: OPTIONS.seed })
        .option("runs", { type: "number", requiresArg: true, default: RUNS, describe: OPTIONS.runs })
        .option("all", allOption(OPTIONS.allErrors));
    },
    async (a) => {
      const { toleranceCommand } = await import("./commands/tolerance.ts");
      setExitCode(toleranceCommand(io, await openDesign(io, a), a));
    },
  );

/** The line with the bench's commands added to it. */
export const addBenchCommands: AddCommand = (line, context) =>
  [addMouth, addSurvey, addNext, addMeasured, addTolerance].reduce((to, add) => add(to, context), line);
