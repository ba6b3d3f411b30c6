// Marks a test as a fault put in on purpose: `pnpm faults` runs what is marked and writes test/faults.md from what it saw.

export interface FaultRow {
  /** What is done wrong; the test's own name where it is left out. Tests that share all of a row make one line. */
  readonly fault?: string;
  /** Where it is put in. */
  readonly on: string;
  /** What must be as it was, or as told, afterwards. */
  readonly survives: string;
  /** What the test cannot do without, where some machines lack it. */
  readonly needs?: string;
}

declare module "vitest" {
  interface TaskMeta {
    fault?: FaultRow;
  }
}

/** For the second place of `test` or `describe`; a test takes its group's row unless it has one of its own. */
export const fault = (row: FaultRow): { meta: { fault: FaultRow } } => ({ meta: { fault: row } });
