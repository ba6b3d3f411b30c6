/** A line of test/faults.md, before its result. */
export interface FaultLine {
  readonly fault: string;
  readonly on: string;
  readonly survives: string;
}
export function cellsOf(line: FaultLine): string[];
