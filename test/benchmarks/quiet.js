// Whether the machine does anything else: what others take makes every time too long, and some longer than others.
import { cpus } from "node:os";
import { setTimeout } from "node:timers/promises";

/** ms to look for before measuring. */
const LOOK = 2000;
/** Share of the processors' time that others may take of a machine that is called quiet. */
const QUIET = 0.05;

function processorTimes() {
  const all = cpus().map(({ times }) => times);
  const sum = (of) => all.reduce((total, times) => total + of(times), 0);
  return {
    idle: sum(({ idle }) => idle),
    total: sum(({ user, nice, sys, idle, irq }) => user + nice + sys + idle + irq),
  };
}

/** Share of the processors' time that others take while this process sleeps, 0 to 1, and whether that is little. */
export async function lookAtMachine() {
  const before = processorTimes();
  await setTimeout(LOOK);
  const after = processorTimes();
  const taken = 1 - (after.idle - before.idle) / (after.total - before.total);
  return { taken, isQuiet: taken <= QUIET };
}

export const quietText = ({ taken, isQuiet }) =>
  isQuiet
    ? `quiet: others take ${percent(taken)} of the processors' time`
    : `NOT QUIET: others take ${percent(taken)} of the processors' time, more than ${percent(QUIET)}; trust no time below, and multiples only roughly`;

const percent = (share) => `${Math.round(100 * share)} %`;
