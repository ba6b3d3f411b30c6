// Programs that are no part of this workspace and that some tests ask for a second opinion: found, or the test says how to get them.
import { spawnSync } from "node:child_process";
import type { TestContext } from "vitest";

interface ProgramRow {
  /** Spellings to try, best first. */
  readonly commands: readonly string[];
  /** Arguments with which it runs and ends well where it is of use. */
  readonly probe: readonly string[];
  readonly toGetIt: string;
}

const poppler = (name: string) => ({
  commands: [name],
  probe: ["-v"],
  toGetIt: "apt-get install poppler-utils",
});

const PROGRAMS = {
  admesh: { commands: ["admesh"], probe: ["--version"], toGetIt: "apt-get install admesh" },
  ezdxf: {
    commands: ["/usr/bin/python3", "python3"],
    probe: ["-c", "import ezdxf"],
    toGetIt: "apt-get install python3-ezdxf, or pip install ezdxf",
  },
  freecad: {
    commands: ["freecadcmd"],
    probe: ["--help"],
    toGetIt: "apt-get install --no-install-recommends freecad",
  },
  lib3mf: {
    commands: ["/usr/bin/python3", "python3"],
    probe: ["-c", "import ctypes; ctypes.CDLL('lib3MF.so.1')"],
    toGetIt: "apt-get install lib3mf1",
  },
  "prusa-slicer": {
    commands: ["prusa-slicer"],
    probe: ["--help"],
    toGetIt: "apt-get install --no-install-recommends prusa-slicer",
  },
  rs274: {
    commands: ["rs274"],
    probe: ["-g", "test/support/empty.ngc"],
    toGetIt: "apt-get install --no-install-recommends linuxcnc-uspace",
  },
  unzip: { commands: ["unzip"], probe: ["-v"], toGetIt: "apt-get install unzip" },
  python: {
    commands: ["python3", "/usr/bin/python3"],
    probe: ["-c", "import json"],
    toGetIt: "apt-get install python3",
  },
  pdftoppm: poppler("pdftoppm"),
  pdftotext: poppler("pdftotext"),
  pdffonts: poppler("pdffonts"),
} as const satisfies Record<string, ProgramRow>;
export type OutsideProgram = keyof typeof PROGRAMS;

/** Command by which a program runs here; undefined where it is missing. */
export function outsideProgram(name: OutsideProgram): string | undefined {
  const { commands, probe } = PROGRAMS[name];
  return commands.find((command) => spawnSync(command, probe, { stdio: "ignore" }).status === 0);
}

/** The same inside a test, which is skipped where the program is missing; with CI=true it fails instead. */
export function requireProgram(context: TestContext, name: OutsideProgram): string {
  const command = outsideProgram(name);
  if (command !== undefined) return command;
  const message = `${name} is missing; to have it: ${PROGRAMS[name].toGetIt}`;
  if (process.env.CI === "true") throw new Error(message);
  console.warn(`skipped "${context.task.name}": ${message}`);
  return context.skip(message);
}

/** What a program prints; it fails the test where the program does not end well. */
export const runForStdout = (command: string, args: readonly string[]): string => runProgram(command, args).stdout;

/** The same with what it prints as an error: warnings, mostly. */
export function runForOutput(command: string, args: readonly string[]): string {
  const { stdout, stderr } = runProgram(command, args);
  return stdout + stderr;
}

/** Both, apart. */
export const runForStreams = (command: string, args: readonly string[]): { out: string; err: string } => {
  const { stdout, stderr } = runProgram(command, args);
  return { out: stdout, err: stderr };
};

function runProgram(command: string, args: readonly string[]): { stdout: string; stderr: string } {
  const { status, stdout, stderr } = spawnSync(command, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${command} ended with ${status}: ${stderr}`);
  return { stdout, stderr };
}
