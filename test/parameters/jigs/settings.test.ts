// What the jigs' settings do: bush, fences, relief, clearance, printer; what is said, and what is left out with a reason.
import { checkWithoutCures, passedChecks } from "@lamplane/bench/checks";
import { outlineArea } from "@lamplane/geometry";
import { elevation } from "@lamplane/parameters/elevation";
import {
  cornerRelief,
  type JigName,
  jigPlans,
  omittedJigs,
  TABLE_CHAMFER,
  templateLayout,
  templateOpening,
} from "@lamplane/parameters/jigs";
import { type Jig, makeJig, planeJigs } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import type { CrossSection } from "manifold-3d";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";
import { areaFacing, trianglesLying } from "../../support/jigs.ts";
import { manifoldOf } from "../../support/meshes.ts";
import { sheet } from "../../support/nested.ts";
import { cutter, withRouter } from "../../support/router-designs.ts";

const planeOf = (changes: Changes = {}) => elevation(designWith({ ...WORKED, ...changes }));
const planOf = (name: JigName, changes: Changes = {}) => jigPlans(planeOf(changes)).find((plan) => plan.name === name)!;
const sin = (angle: number) => Math.sin((angle * Math.PI) / 180);
const cos = (angle: number) => Math.cos((angle * Math.PI) / 180);

describe("recess template", () => {
  test("a bush grows the opening by half of what it is larger than the cutter, all round", () => {
    const box = (changes: Changes) => {
      const plane = planeOf(changes);
      const corners = templateOpening(plane, templateLayout(plane)).flatMap((s) => [s.from, s.to]);
      return { half: Math.max(...corners.map((p) => p.x)), low: Math.min(...corners.map((p) => p.y)) };
    };
    const [bearing, bush] = [
      box({ "recess.cutter": 10 }),
      box({ "recess.cutter": 10, "jigs.bush": 16, "jigs.cutterLength": 20 }),
    ];
    expect(bearing.half).toBeCloseTo(19 / 2, 9);
    expect(bush.half - bearing.half).toBeCloseTo(3, 9);
    expect(bearing.low - bush.low).toBeCloseTo(3, 9);
  });

  test("its thickness follows from the cutter and the recess: the bearing runs on it in both passes", () => {
    const places = templateLayout(planeOf({ "jigs.cutterLength": 25 }));
    const depth = planeOf().recess!.depth;
    for (const pass of [places.firstPass, depth]) {
      const bearingOverBed = 25 - pass;
      expect(places.plate - bearingOverBed).toBeGreaterThanOrEqual(3);
    }
    expect(templateLayout(planeOf({ "jigs.bush": 17, "jigs.cutterLength": 20 })).plate).toBeCloseTo(20 - depth, 9);
  });

  test("says in words which cutter and bush it is made for", () => {
    expect(planOf("recess-template").use).toMatch(/cutter of 12\.7 mm with a bearing/);
    const bush = planOf("recess-template", { "jigs.bush": 17, "jigs.cutterLength": 20 });
    expect(bush.use).toMatch(/cutter of 12\.7 mm in a guide bush of 17 mm/);
    expect(makeJig(bush).reads.join(" ")).toMatch(/CUTTER 12\.7 BUSH 17/);
  });

  test("slotted fences come as parts of their own, and say so", () => {
    const jig = makeJig(planOf("recess-template", { "jigs.fence": "slotted" }));
    expect(jig.shells).toBe(3);
    expect(jig.use).toMatch(/for cores of .* to /);
    expect(makeJig(planOf("recess-template")).shells).toBe(1);
  });

  test.each([
    [{ "jigs.bush": 13 }, "let-cutter-turn-in-bush"],
    [{ "jigs.bush": 50, "jigs.cutterLength": 20 }, "take-smaller-bush"],
    [{ "jigs.bush": 17, "jigs.cutterLength": 6 }, "take-longer-cutter"],
  ] as [Changes, string][])("%j leaves it out with a note, and the plane may still be built", (changes, advice) => {
    const plane = planeOf(changes);
    expect(omittedJigs(plane).map(({ name }) => name)).toEqual(["recess-template"]);
    const note = checkWithoutCures(plane).find(({ code }) => code === "recess-template-jig");
    expect(note).toMatchObject({ severity: "note", advice });
    expect(planeJigs(plane)).toHaveLength(7);
  });
  test.each([{ "capIron.thickness": 0 }, { "capIron.screwHead.height": 0 }])(
    "%j asks for none, and no note says so",
    (changes) => {
      const plane = planeOf(changes);
      expect(omittedJigs(plane)).toEqual([]);
      expect(checkWithoutCures(plane).map(({ code }) => code)).not.toContain("recess-template-left-out");
      expect(planeJigs(plane)).toHaveLength(7);
    },
  );
});

describe("relief for a cutter", () => {
  const facingArea = (name: JigName, relief: number, way: readonly [number, number, number]) =>
    areaFacing(trianglesLying(makeJig(planOf(name, { "jigs.relief": relief }))), way, 0.01);

  test("left to the shop it is a tenth or so over the smallest end mill that cuts through the thickest plate, 0 without one", () => {
    const mills = [
      cutter("end-6", 6, { cutting: 22 }),
      cutter("end-3", 3.175, { cutting: 12 }),
      cutter("drill", 2, { kind: "drill" }),
    ];
    const shop = (thickness: number, more: Partial<Design> = {}): Design => {
      const routed = withRouter(designWith(WORKED), mills);
      return {
        ...routed,
        jigs: { ...routed.jigs, relief: "auto" },
        sheets: [sheet("ply", "ply", [600, 400, thickness])],
        ...more,
      };
    };
    expect(cornerRelief(shop(15))).toBe(3.1); // 15.3 to cut through: the 6 mm mill, of radius 3
    expect(cornerRelief(shop(9))).toBe(1.7); // the other reaches 12: radius 1.5875
    expect(cornerRelief(shop(24))).toBe(0); // neither reaches
    expect(cornerRelief(shop(9, { sheets: [] }))).toBe(0);
    expect(cornerRelief(shop(9, { router: { ...designWith(WORKED).router } }))).toBe(0);
    const area = (relief: "auto" | number) => {
      const design = shop(15);
      const plans = jigPlans(elevation({ ...design, jigs: { ...design.jigs, relief } }));
      return plans.map(({ bodies }) => bodies.map(({ boundary }) => outlineArea(boundary)));
    };
    expect(area("auto")).toEqual(area(3.1));
    expect(area("auto")).not.toEqual(area(0));
  });

  test("takes nothing off a face that registers, and something off its stop", () => {
    // Where the relief's arc makes a corner, the chamfer at the table ends short of it: there the face reaches lower.
    const more = (name: JigName, way: readonly [number, number, number]) =>
      facingArea(name, 4, way) - facingArea(name, 0, way);
    const expectWhole = (gain: number) => {
      expect(gain).toBeGreaterThan(-1e-6);
      expect(gain).toBeLessThan(TABLE_CHAMFER ** 2);
    };
    const omega = WORKED["wedge.angle"];
    const floor = [sin(omega), cos(omega), 0] as const;
    const butt = [-cos(omega), sin(omega), 0] as const;
    expectWhole(more("wedge-sled", floor));
    expect(facingArea("wedge-sled", 4, butt)).toBeLessThan(facingArea("wedge-sled", 0, butt) - 8 * 15);
    const beta = WORKED["bed.angle"];
    const sole = [sin(beta), cos(beta), 0] as const;
    const heel = [-cos(beta), sin(beta), 0] as const;
    expectWhole(more("bed-cradle", sole));
    expect(facingArea("bed-cradle", 4, heel)).toBeLessThan(facingArea("bed-cradle", 0, heel) - 4 * 15);
  });
});

describe("printer", () => {
  test("a jig too large for it is a warning that says what to do, and ends with a larger one", () => {
    const small = { "shop.printer.width": 100, "shop.printer.depth": 90, "shop.printer.height": 60 };
    const found = checkWithoutCures(planeOf(small)).filter(({ code }) => code.endsWith("-print-size"));
    expect(found.map(({ code }) => code)).toContain("bed-gauge-print-size");
    expect(found.map(({ code }) => code)).not.toContain("bed-cradle-print-size");
    for (const { severity, advice, data } of found) {
      expect(severity).toBe("warning");
      expect(advice).toBe("cut-from-sheet-or-print-elsewhere");
      expect(data).toMatchObject({ printer: [100, 90, 60], flat: true });
    }
    expect(checkWithoutCures(planeOf()).filter(({ code }) => code.endsWith("-print-size"))).toEqual([]);
    expect(passedChecks(planeOf()).filter(({ code }) => code.endsWith("-print-size"))).toHaveLength(8);
  });

  test("a jig may be turned to fit", () => {
    const narrow = { "shop.printer.width": 110, "shop.printer.depth": 220 };
    expect(checkWithoutCures(planeOf(narrow)).filter(({ code }) => code.endsWith("-print-size"))).toEqual([]);
  });
});

describe("letters", () => {
  /** What is sunk in a jig's upper face, as the mesh has it: the section under the letters less the one through them. */
  const letters = (jig: Jig, top: number) => {
    const solid = manifoldOf(jig.lying);
    const sunk = solid.slice(top - 0.7).subtract(solid.slice(top - 0.3));
    return sunk.offset(-0.01, "Miter").offset(0.01, "Miter"); // without the specks along the outer edge
  };

  /** How many separate letters and dots there are. */
  const boundaries = (section: CrossSection): number =>
    section.toPolygons().filter((ring) => areaOf(ring) > 0.05).length;
  const areaOf = (ring: readonly (readonly number[])[]): number =>
    ring.reduce((sum, p, i) => {
      const q = ring[(i + 1) % ring.length]!;
      return sum + (p[0]! * q[1]! - q[0]! * p[1]!) / 2;
    }, 0);

  test("have strokes of 0.8 mm or more, stand apart, and are as high as 6 mm", () => {
    const name = "The-quick_brown.fox-0123456789-jumps-over-lazy-dogs-VXYZKW";
    const plane = elevation({ ...designWith(WORKED), name });
    for (const [which, top] of [
      ["wedge-sled", 20],
      ["bed-gauge", 16],
      ["pin-guide", 12],
    ] as const) {
      const sunk = letters(makeJig(jigPlans(plane).find((plan) => plan.name === which)!), top);
      const opened = sunk.offset(-0.4, "Round", 2, 32).offset(0.4, "Round", 2, 32);
      expect(sunk.area()).toBeGreaterThan(30);
      expect(opened.area() / sunk.area()).toBeGreaterThan(0.93);
      // Grown by a quarter of a millimetre each, no two letters run together.
      expect(boundaries(sunk.offset(0.25, "Round", 2, 32))).toBe(boundaries(sunk));
      const highest = sunk.decompose().map((letter) => letter.bounds().max[1] - letter.bounds().min[1]);
      expect(Math.max(...highest)).toBeGreaterThan(6);
    }
  });

  test("a name of 60 letters is shortened, never a jig without its angle", () => {
    const plane = elevation({ ...designWith(WORKED), name: "W".repeat(60) });
    const jigs = planeJigs(plane);
    expect(jigs).toHaveLength(8);
    for (const jig of jigs) expect([jig.name, jig.reads.join(" ")]).toEqual([jig.name, expect.stringMatching(/WWW/)]);
    expect(jigs.find(({ name }) => name === "bed-gauge")!.reads.slice(0, 2)).toEqual(["47°", "43°"]);
  });
});

describe("words", () => {
  test("every jig says what it registers against, how it is used and printed", () => {
    for (const { registersAgainst, use, printed } of jigPlans(planeOf())) {
      expect(registersAgainst.length).toBeGreaterThan(20);
      expect(printed).toMatch(/without supports/);
      expect(`${registersAgainst}${use}${printed}`).not.toMatch(/undefined|NaN|\$\{/);
    }
  });

  test("the spacer says where the blocks then stand", () =>
    expect(planOf("throat-spacer").use).toMatch(
      /blocks stand 3\.34 mm apart on the sole of the blank, feather off, the foot of the bed 95\.62 mm/,
    ));

  test("the pin guide says at which stage it registers", () =>
    expect(planOf("pin-guide").registersAgainst).toMatch(/before glue-up and truing/));
});

test("a drill is one that is sold, nearest over the hole wanted, whatever the rule shows", () => {
  const inches: Changes = { units: "in", "shop.smallestFraction": "1/16", "pin.tenon": 9.525 };
  const complaints = (clearance: number) =>
    (["fit-test", "pin-guide"] as const).map(
      (name) => planOf(name, { ...inches, "pin.tenonClearance": clearance }).title,
    );
  for (const title of complaints(25.4 / 64)) expect(title).toContain("25/64 in"); // 3/8 in and 1/64 in
  for (const title of complaints(0.2)) expect(title).toContain("letter W (0.386 in)"); // over 0.383: (9.525 + 0.2) / 25.4
});
