// The commands used beside the bench, as they are typed; each is loaded when it is asked for.
import type { Argv } from "yargs";
import { loadDesign } from "./design-file.ts";
import type { Exit, Io } from "./io.ts";
import { FILE, JSON_OUT, requireSingle, WITH } from "./options.ts";

/** A length as typed; read in the design's unit once the design is known. */
const LENGTH = { type: "string", requiresArg: true } as const;

/** The line with the bench's commands added to it. */
export const addBenchCommands = (line: Argv, io: Io, setExitCode: (code: Exit) => void): Argv =>
  line
    .command(
      "mouth FILE",
      "what to take off the sole for the mouth wanted",
      (y) =>
        y
          .positional("FILE", FILE)
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("seen", { ...LENGTH, demandOption: true, describe: "mouth seen, edge at the sole; 0 for none" })
          .option("wanted", { ...LENGTH, describe: "mouth wanted; the design's unless told otherwise" })
          .option("shaving", {
            ...LENGTH,
            describe: "thickness of a shaving off the sole; 0.05 mm unless told otherwise",
          }),
      async (a) => {
        const { mouthCommand } = await import("./commands/mouth.ts");
        const { seen, wanted, shaving } = a;
        const limits = {
          seen: requireSingle("seen", seen),
          wanted: requireSingle("wanted", wanted),
          shaving: requireSingle("shaving", shaving),
        };
        setExitCode(mouthCommand(io, loadDesign(io, a.FILE, a.with), { ...limits, json: a.json }));
      },
    )
    .command(
      "survey FILE [READINGS]",
      "read a bed survey: flat, hollow or humped, by how much, where to work",
      (y) =>
        y
          .positional("FILE", FILE)
          .positional("READINGS", { type: "string", describe: "readings file (YAML)" })
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("blank", { type: "boolean", default: false, describe: "print a readings file to fill in" }),
      async (a) => {
        const { surveyCommand } = await import("./commands/survey.ts");
        setExitCode(surveyCommand(io, loadDesign(io, a.FILE, a.with), { ...a, readings: a.READINGS }));
      },
    )
    .command(
      "next FILE",
      "where the build stands and what to do now",
      (y) => y.positional("FILE", FILE).option("json", JSON_OUT),
      async (a) => {
        const { nextCommand } = await import("./commands/next.ts");
        setExitCode(nextCommand(io, loadDesign(io, a.FILE), a.FILE, a.json));
      },
    )
    .command(
      "measured FILE [VALUES..]",
      "write what came out at the bench into the file: coreWidth=49.7",
      (y) =>
        y
          .positional("FILE", FILE)
          .positional("VALUES", { type: "string", array: true, default: [] as string[], describe: "KEY=VALUE" })
          .option("read-twice", {
            type: "boolean",
            default: false,
            describe: "the value is far from the plan, was read again, and is so",
          })
          .option("json", JSON_OUT),
      async (a) => {
        const { measuredCommand } = await import("./commands/measured.ts");
        setExitCode(measuredCommand(io, a.FILE, a.VALUES, { json: a.json, readTwice: a.readTwice }));
      },
    )
    .command(
      "tolerance FILE",
      "which step decides the mouth, and how well each must be done",
      async (y) => {
        const { RUNS } = await import("@lamplane/bench");
        return y
          .positional("FILE", FILE)
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("seed", { type: "number", requiresArg: true, default: 1, describe: "same seed, same runs" })
          .option("runs", { type: "number", requiresArg: true, default: RUNS, describe: "planes made by chance" });
      },
      async (a) => {
        const { toleranceCommand } = await import("./commands/tolerance.ts");
        setExitCode(toleranceCommand(io, loadDesign(io, a.FILE, a.with), a));
      },
    );
