// Who writes: a mark that no other run ever bears, and whether the process that bears one still runs. A guess is never taken for a no.
import { randomBytes } from "node:crypto";
import { readFileSync, readlinkSync } from "node:fs";
import { hostname } from "node:os";
import { sha256Hex } from "./sha256.ts";
import { systemErrorCode } from "./write-error.ts";

/** running, gone, or not to be known from here: another machine's, another container's, or a system that tells no starting times. */
export type RunStatus = "running" | "gone" | "unknown";

/** Runs that this copy of the program is in the midst of. */
const active = new Set<string>();
const COPY = randomBytes(4).toString("hex");
let runs = 0;

/** A mark for a new run of this process; `endRun` must follow. Digits, small letters and dots. */
export function beginRun(): string {
  const { machine, boot, space } = processScope();
  const mark = [process.pid, machine, boot, space, processStart(process.pid) ?? UNKNOWN_START, COPY, ++runs].join(".");
  active.add(mark);
  return mark;
}

export const endRun = (mark: string): boolean => active.delete(mark);

/** Process number in a mark; undefined where the text is no mark. */
export function processIdOf(mark: string): number | undefined {
  const found = /^([1-9]\d*)(?:\.[0-9a-f]{8}){3}\.[0-9a-z]+\.[0-9a-f]{8}\.[1-9]\d*$/.exec(mark);
  return found ? Number(found[1]) : undefined;
}

/** Whether the run that bears a mark goes on. A process is told from a later one of its number by when it started. */
export function runStatus(mark: string): RunStatus {
  const [id, machine, boot, space, start, copy] = mark.split(".");
  const here = processScope();
  if (machine !== here.machine) return "unknown";
  if (boot !== here.boot) return "gone";
  if (space !== here.space) return "unknown";
  if (copy === COPY && Number(id) === process.pid) return active.has(mark) ? "running" : "gone";
  if (!processExists(Number(id))) return "gone";
  const now = processStart(Number(id));
  if (now === undefined || start === UNKNOWN_START) return "unknown";
  return now === start ? "running" : "gone";
}

/** Starts of processes are known on Linux alone. */
const UNKNOWN_START = "unknown";

/** Within what a process number means anything: the machine, its running since it was switched on, the container's numbering. */
function processScope(): { machine: string; boot: string; space: string } {
  return {
    machine: shortHash(readOrEmpty(() => readFileSync("/etc/machine-id", "utf8")) + hostname()),
    boot: shortHash(readOrEmpty(() => readFileSync("/proc/sys/kernel/random/boot_id", "utf8"))),
    space: shortHash(readOrEmpty(() => readlinkSync("/proc/self/ns/pid"))),
  };
}

const shortHash = (text: string): string => sha256Hex(new TextEncoder().encode(text)).slice(0, 8);

function readOrEmpty(ask: () => string): string {
  try {
    return ask();
  } catch {
    return ""; // a system without it: the same for every run there
  }
}

/** Ticks from the machine's start to the process's; undefined where the system does not say, or where it has ended but was not taken note of. */
function processStart(id: number): string | undefined {
  const [state, ...rest] = readOrEmpty(() => readFileSync(`/proc/${id}/stat`, "utf8"))
    .replace(/^.*\) /s, "")
    .split(" ");
  if (state === "Z" || state === "X") return "ended";
  return rest[18]; // proc(5): starttime is field 22, the state field 3
}

function processExists(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return systemErrorCode(error) !== "ESRCH"; // EPERM: another user's
  }
}
