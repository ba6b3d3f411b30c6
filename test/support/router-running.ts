// How a program runs, judged by the commands that Debian's RS-274 interpreter makes of it: where the cutter starts, goes
// fast, stops and ends, and what the spindle does meanwhile.
// Common practice, no published source: retract before going sideways, new z or tool length after a change, dwell after M3.
import { canonicalOutput } from "./router-cutting.ts";

interface Heights {
  /** Of the stock's top over the program's zero, mm. */
  readonly top: number;
  /** Over the stock's top, mm: the least between cuts, the least at start, stops and end. */
  readonly rapid: number;
  readonly park: number;
  /** How many cutters the program has. */
  readonly cutters: number;
}

interface State {
  readonly at: readonly [number, number, number];
  readonly scale: number;
  readonly spindle: "off" | "starts" | "turns";
  /** Whether nobody but the control has moved or changed the cutter since it stood at its park height. */
  readonly isPlaced: boolean;
  /** Whether a cutter was changed, and neither was the program stopped nor a length taken since. */
  readonly isUnmeasured: boolean;
  readonly changes: number;
  readonly hasMoved: boolean;
}

const NEAR = 5e-3; // mm: the interpreter prints ten-thousandths of an inch
const MOVES = ["STRAIGHT_TRAVERSE", "STRAIGHT_FEED", "ARC_FEED"];

/** What is dangerous in how a program runs, once each. */
export function faultsOfRunning(text: string, heights: Heights): string[] {
  const { out, complaint } = canonicalOutput(text);
  if (complaint !== "") return [`interpreter: ${complaint}`];
  const faults = new Set<string>();
  let state: State = {
    at: [0, 0, 0],
    scale: 1,
    spindle: "off",
    isPlaced: false,
    isUnmeasured: false,
    changes: 0,
    hasMoved: false,
  };
  for (const line of out.split("\n")) {
    const [, name, list = ""] = /(\w+)\((.*)\)\s*$/.exec(line) ?? [];
    if (name === undefined) continue;
    if (MOVES.includes(name))
      for (const fault of faultsOfMove(name, endOf(name, list, state), state, heights)) faults.add(fault);
    if (/PROGRAM_STOP|PROGRAM_END|CHANGE_TOOL/.test(name))
      for (const fault of faultsOfStop(name, state, heights)) faults.add(fault);
    state = after(name, list, state);
  }
  return [...faults];
}

/** Where a move ends. A block of the interpreter's output gives x, y and z, of an arc x, y and at last z. */
function endOf(name: string, list: string, { scale }: State): [number, number, number] {
  const n = list.split(",").map((value) => Number(value) * scale);
  return [n[0]!, n[1]!, n[name === "ARC_FEED" ? 5 : 2]!];
}

function faultsOfMove(
  name: string,
  [x, y, z]: readonly [number, number, number],
  state: State,
  heights: Heights,
): string[] {
  const [fromX, fromY, fromZ] = state.at;
  const isSideways = name === "ARC_FEED" || Math.hypot(x - fromX, y - fromY) > NEAR;
  const low = Math.min(z, fromZ) - heights.top;
  const faults = [];
  if (state.isUnmeasured) faults.push("a changed cutter moves before a stop or a length of its own");
  if (!state.isPlaced) {
    if (isSideways) faults.push("goes sideways before it is at its park height");
    if (name !== "STRAIGHT_FEED") faults.push("goes fast from where it may stand");
    if (z - heights.top < heights.park - NEAR) faults.push("goes down before it is at its park height");
    if (state.spindle !== "off") faults.push("turns before it is at its park height");
    return faults;
  }
  if (name === "STRAIGHT_TRAVERSE" && isSideways && low < heights.rapid - NEAR)
    faults.push("goes fast sideways too low");
  if (state.spindle === "off") faults.push("moves with the spindle off");
  if (state.spindle === "starts") faults.push("moves before the spindle is at its speed");
  return faults;
}

function faultsOfStop(name: string, state: State, { top, park, cutters }: Heights): string[] {
  if (!state.hasMoved) return [];
  return [
    ...(state.spindle === "off" || name === "PROGRAM_END" ? [] : ["stops with the spindle on"]),
    ...(state.isPlaced && state.at[2] - top < park - NEAR ? ["stops lower than its park height"] : []),
    ...(name === "PROGRAM_END" && state.changes !== cutters - 1 ? ["changes its cutter another number of times"] : []),
  ];
}

function after(name: string, list: string, state: State): State {
  const away = { isPlaced: false, changes: state.changes + (state.isPlaced ? 1 : 0) };
  if (name === "USE_LENGTH_UNITS") return { ...state, scale: list === "CANON_UNITS_INCHES" ? 25.4 : 1 };
  if (name === "START_SPINDLE_CLOCKWISE") return { ...state, spindle: "starts" };
  if (name === "DWELL" && Number(list) > 0 && state.spindle === "starts") return { ...state, spindle: "turns" };
  if (name === "CHANGE_TOOL") return { ...state, ...away, spindle: "off", isUnmeasured: true };
  if (name === "PROGRAM_STOP") return { ...state, ...away, isUnmeasured: false };
  if (name === "STOP_SPINDLE_TURNING") return { ...state, spindle: "off" };
  if (name === "USE_TOOL_LENGTH_OFFSET" && !/^0\.0+ 0\.0+ 0\.0+,/.test(list)) return { ...state, isUnmeasured: false };
  return MOVES.includes(name) ? { ...state, at: endOf(name, list, state), isPlaced: true, hasMoved: true } : state;
}
