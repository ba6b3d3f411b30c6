// How each way of changing the cutter runs, by an RS-274 interpreter's commands; and that each danger put into a program is found.
import { describe, expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { cutter, type Routed, routed, withRouter } from "../support/router-designs.ts";
import { faultsOfRunning } from "../support/router-running.ts";

const CUTTERS = [cutter("end-6", 6), cutter("drill-9.7", 9.7, { kind: "drill", step: 5 })];
type Machine = NonNullable<Parameters<typeof withRouter>[2]>;

const cheek = (machine: Machine): Routed =>
  routed(withRouter(designWith(WORKED), CUTTERS, machine)).programs.find(
    ({ program }) => program.setUp.name === "cheek-right",
  )!;
const faultsOf = ({ program, judged }: Routed, text: string): string[] =>
  faultsOfRunning(text, { top: judged.top, cutters: program.toolpaths.length, ...judged.heights });

test.for<Machine>([
  { toolChange: "pause" },
  { toolChange: "m6", units: "in", zero: "corner-spoilboard" },
  { toolChange: "m6-length", pathControl: "g61", parkHeight: 80 },
  { toolChange: "m6-length", zero: "corner-spoilboard", rapidHeight: 20, parkHeight: 20, spindleDelay: 0.5 },
])("a program with two cutters and %o runs without danger", (machine, context) => {
  requireProgram(context, "rs274");
  const routedCheek = cheek(machine);
  expect(routedCheek.program.toolpaths).toHaveLength(2);
  expect(faultsOf(routedCheek, routedCheek.text)).toEqual([]);
});

describe("a danger put into a program is found:", () => {
  /** @param at which of the places where the pattern fits is changed */
  const changed = (text: string, pattern: RegExp, by: string, at = 0): string => {
    const places = [...text.matchAll(new RegExp(pattern, "gm"))];
    const place = places.at(at);
    if (!place) throw new Error(`no ${pattern}`);
    return text.slice(0, place.index) + place[0].replace(pattern, by) + text.slice(place.index + place[0].length);
  };
  test.for<[string, Machine, RegExp, string, number, RegExp]>([
    ["a change without a stop", { toolChange: "pause" }, /^M0\n/, "", 0, /another number of times/],
    ["M6 without a stop", { toolChange: "m6" }, /^M0\n/, "", -1, /before a stop or a length/],
    ["M6 without a length", { toolChange: "m6-length" }, /^G43 H1\n/, "", 0, /before a stop or a length/],
    ["a fast first move", {}, /^G1 Z30 (F\d+)/, "$1\nG0 Z30", 0, /goes fast from where it may stand/],
    ["a low first move", {}, /^G1 Z30 F(\d+)/, "G1 Z6 F$1", 0, /goes down before/],
    ["no way up after a stop", {}, /^G1 Z30 (F\d+)\n/, "$1\n", -1, /goes sideways before/],
    ["a spindle started too early", {}, /^(G1 Z30 F\d+)\n(S\d+ M3)/, "$2\n$1", 0, /turns before/],
    ["no wait for the spindle", {}, /^G4 P3\n/, "", -1, /before the spindle is at its speed/],
    ["no spindle", {}, /^S\d+ M3\n/, "", -1, /with the spindle off/],
    ["a rapid move too low", {}, /^(G0 X)/, "G0 Z5\n$1", 0, /sideways too low/],
    ["a stop too low", {}, /^G0 Z30\n(M5)/, "$1", 0, /stops lower/],
    ["an end too low", {}, /^G0 Z30\n(M5)/, "$1", -1, /stops lower/],
    ["a stop with the spindle on", {}, /^M5\n/, "", 0, /stops with the spindle on/],
  ])("%s", ([, machine, pattern, by, at, fault], context) => {
    requireProgram(context, "rs274");
    const routedCheek = cheek({ toolChange: "pause", ...machine });
    const text = changed(routedCheek.text, pattern, by, at);
    expect(text).not.toBe(routedCheek.text);
    expect(faultsOf(routedCheek, text).join("; ")).toMatch(fault);
  });
});

describe("a set-up is refused, with both figures, whose cutter", () => {
  const limitsOf = (more: Parameters<typeof cutter>[2], machine: Machine = {}) =>
    routed(withRouter(designWith(WORKED), [cutter("end-6", 6, more)], machine)).limits.filter(
      ({ setUp }) => setUp === "cheek-left",
    );
  test("is to turn faster than the spindle may", () => {
    expect(limitsOf({ speed: 30000 })).toMatchObject([{ code: "speed", value: 30000, limit: 24000 }]);
    expect(limitsOf({ speed: 30000 }, { maxSpeed: 30000 })).toEqual([]);
  });
  test("is to go deeper in a pass than it has edges", () => {
    expect(limitsOf({ step: 40, cutting: 22 })).toMatchObject([{ code: "step", value: 40, limit: 22 }]);
    expect(limitsOf({ step: 22, cutting: 22 })).toEqual([]);
  });
});
