// The body in 3D without a screen: the eye stands where a view is taken and holds the whole box; names keep apart; parts open along
// their glue lines; each pen line is a quad.
import { Box3, OrthographicCamera, Vector2, Vector3 } from "three";
import type { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { describe, expect, test } from "vitest";
import { BODY_VIEWS, type BodyView } from "../../packages/viewer/src/body/body-views.ts";
import {
  type CameraRig,
  faceView,
  fitCamera,
  setAspect,
  turnCamera,
  zoomCamera,
} from "../../packages/viewer/src/body/camera-rig.ts";
import { explodedOffset, makePartLook, type Tones } from "../../packages/viewer/src/body/looks.ts";
import { type NamedPart, nameLinePath, partLabel, placeNames } from "../../packages/viewer/src/body/name-layout.ts";
import { createPenLines } from "../../packages/viewer/src/body/pen-lines.ts";

const BOX = new Box3(new Vector3(0, -3, -33), new Vector3(255, 110, 33));
const VIEWS = Object.keys(BODY_VIEWS) as BodyView[];
const CANVASES = [
  [1200, 500],
  [900, 900],
  [360, 300],
] as const;

/** The controls' part in it: the camera looks at the target. */
function createRig(): CameraRig {
  const camera = new OrthographicCamera(-1, 1, 1, -1, -3000, 3000);
  const target = new Vector3();
  const update = () => {
    camera.lookAt(target);
    return true;
  };
  return { camera, controls: { target, update } as unknown as OrbitControls };
}

const corners = [BOX.min.x, BOX.max.x].flatMap((x) =>
  [BOX.min.y, BOX.max.y].flatMap((y) => [BOX.min.z, BOX.max.z].map((z) => new Vector3(x, y, z))),
);
const away = ({ camera, controls }: CameraRig) => camera.position.clone().sub(controls.target);

describe("the eye", () => {
  test.each(VIEWS)("stands where the view %s is taken from, and looks at the middle", (view) => {
    const rig = createRig();
    rig.camera.up.set(1, 0, 0);
    faceView(rig, view, BOX);
    expect(rig.controls.target.toArray()).toEqual([127.5, 53.5, 0]);
    expect(
      away(rig)
        .normalize()
        .dot(new Vector3(...BODY_VIEWS[view].from).normalize()),
    ).toBeCloseTo(1, 9);
    expect(away(rig).length()).toBeGreaterThan(BOX.getSize(new Vector3()).length());
    expect(rig.camera.up.toArray()).toEqual([0, 1, 0]);
  });

  test.each(VIEWS.flatMap((view) => CANVASES.map(([width, height]) => [view, width, height] as const)))(
    "holds the whole box in view %s on %i by %i px, as large as margin and names leave room",
    (view, width, height) => {
      const rig = createRig();
      faceView(rig, view, BOX);
      rig.camera.zoom = 7;
      fitCamera(rig, BOX, { clientWidth: width, clientHeight: height } as Element);
      setAspect(rig, width, height);
      rig.camera.updateMatrixWorld();
      expect(rig.camera.zoom).toBe(1);
      expect((rig.camera.right - rig.camera.left) / (rig.camera.top - rig.camera.bottom)).toBeCloseTo(
        width / height,
        9,
      );
      const seen = corners.map((corner) => corner.clone().project(rig.camera));
      const [across, up] = [
        Math.max(...seen.map(({ x }) => Math.abs(x))),
        Math.max(...seen.map(({ y }) => Math.abs(y))),
      ];
      for (const { z } of seen) expect(Math.abs(z)).toBeLessThan(1);
      const room = Math.max(0.6, 1 - (2 * 96) / width); // names stand in 96 px at each side; a phone's body keeps 0.6
      expect(up).toBeLessThan(0.9);
      expect(across).toBeLessThan(0.9 * room);
      expect(Math.max(up, across / room)).toBeGreaterThan(0.8);
    },
  );

  test("turns about the body at its distance, back to where it was after a whole turn, and never over the pole", () => {
    const rig = createRig();
    faceView(rig, "side", BOX);
    const [begin, distance] = [away(rig), away(rig).length()];
    turnCamera(rig, Math.PI / 2, 0);
    expect(away(rig).x / distance).toBeCloseTo(1, 9); // from the heel
    turnCamera(rig, (3 * Math.PI) / 2, 0);
    expect(away(rig).distanceTo(begin) / distance).toBeLessThan(1e-9);
    turnCamera(rig, 0, -0.2);
    expect(away(rig).y / distance).toBeCloseTo(Math.sin(0.2), 6);
    for (let i = 0; i < 40; i++) turnCamera(rig, 0, -0.2);
    expect(away(rig).length()).toBeCloseTo(distance, 6);
    expect(away(rig).z).toBeGreaterThan(0);
    expect(away(rig).y / distance).toBeGreaterThan(0.97);
    for (let i = 0; i < 40; i++) turnCamera(rig, 0, 0.2);
    expect(away(rig).y / distance).toBeLessThan(-0.97);
    turnCamera(rig, Math.PI, 0);
    expect(away(rig).z).toBeLessThan(0);
  });

  test("comes closer and goes further by shares, within bounds", () => {
    const rig = createRig();
    zoomCamera(rig, 1.5);
    zoomCamera(rig, 2);
    expect(rig.camera.zoom).toBeCloseTo(3, 9);
    for (let i = 0; i < 30; i++) zoomCamera(rig, 2);
    const most = rig.camera.zoom;
    zoomCamera(rig, 2);
    expect([rig.camera.zoom, most > 10 && most < 1000]).toEqual([most, true]);
    for (let i = 0; i < 30; i++) zoomCamera(rig, 0.5);
    const least = rig.camera.zoom;
    zoomCamera(rig, 0.5);
    expect([rig.camera.zoom, least > 0.01 && least < 1]).toEqual([least, true]);
  });
});

describe("names of the parts", () => {
  const names = ["front-block", "bed-block", "cheek-left", "cheek-right", "iron", "cap-iron", "wedge", "cross-pin"];
  const [width, height] = [700, 400];
  const spread: NamedPart[] = names.map((name, i) => ({ name, x: 80 + 70 * i, y: 200 + 3 * (i % 3) }));
  const crowded: NamedPart[] = names.map((name, i) => ({ name, x: 600 + i, y: 395 - i }));
  const high: NamedPart[] = names.map((name, i) => ({ name, x: 20 + i, y: -40 + i }));

  test.each([
    ["spread", spread],
    ["in the lower right corner", crowded],
    ["over the upper left corner", high],
  ])(
    "of parts %s stand on the canvas, a line apart, in the order of their heights, about half on each side",
    (_, parts) => {
      const placed = placeNames(parts, width, height);
      expect(placed.map(({ name }) => name).sort()).toEqual([...names].sort());
      const sides = [false, true].map((isRight) => placed.filter((each) => each.isRight === isRight));
      for (const side of sides) {
        expect(Math.abs(side.length - names.length / 2)).toBeLessThanOrEqual(1);
        const byHeight = [...side].sort((a, b) => a.y - b.y);
        expect([...side].sort((a, b) => a.at - b.at)).toEqual(byHeight);
        for (const [i, { at }] of byHeight.entries()) {
          expect(at).toBeGreaterThan(5);
          expect(at).toBeLessThan(height - 5);
          if (i > 0) expect(at - byHeight[i - 1]!.at).toBeGreaterThanOrEqual(21.9);
        }
      }
      const leftmost = Math.max(...sides[0]!.map(({ x }) => x));
      for (const { x } of sides[1]!) expect(x).toBeGreaterThanOrEqual(leftmost);
    },
  );

  test("stand at their part's height where nothing is in the way", () => {
    const [one, other] = placeNames(
      [
        { name: "iron", x: 100, y: 120 },
        { name: "wedge", x: 500, y: 260 },
      ],
      width,
      height,
    );
    expect([one!.at, one!.isRight, other!.at, other!.isRight]).toEqual([120, false, 260, true]);
  });

  test("have a line from their inner edge to their part", () => {
    for (const place of placeNames(spread, width, height)) {
      const [, end, at, x, y] = /^M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)m/.exec(nameLinePath(place, width))!;
      expect([Number(at), Number(x), Number(y)]).toEqual([place.at, place.x, place.y]);
      const long = place.isRight ? width - Number(end) : Number(end);
      expect(long).toBeGreaterThan(5 * place.name.length);
      expect(long).toBeLessThan(9 * place.name.length + 20);
    }
  });

  test("are those of the trade", () => {
    expect(["cheek-left", "cheek-right", "bed-block", "cap-iron"].map(partLabel)).toEqual([
      "left cheek",
      "right cheek",
      "bed block",
      "cap iron",
    ]);
  });
});

describe("the opened body", () => {
  const PARTS = [
    "front-block",
    "bed-block",
    "cheek-left",
    "cheek-right",
    "iron",
    "cap-iron",
    "cap-screw",
    "wedge",
    "cross-pin",
  ];
  const [width, bed] = [66, 47];
  const at = (part: string, open: number) => explodedOffset(part, open, width, bed);

  test("is whole when it is shut, and ever wider open the further it is opened", () => {
    for (const part of PARTS) {
      expect(Math.hypot(...at(part, 0)), part).toBe(0);
      const opened = [0, 0.2, 0.4, 0.6, 0.8, 1].map((open) => Math.hypot(...at(part, open)));
      for (const [i, far] of opened.entries()) if (i > 0) expect(far, part).toBeGreaterThanOrEqual(opened[i - 1]!);
    }
  });

  test("has its cheeks off to either side, alike, before anything is drawn out", () => {
    expect(at("cheek-right", 0.3)).toEqual(at("cheek-left", 0.3).map((by) => 0 - by));
    const [x, y, z] = at("cheek-left", 1);
    expect([x, y]).toEqual([0, 0]);
    expect(z).toBeGreaterThan(width); // a whole body's width: nothing lies in front of the core
    expect(Math.hypot(...at("wedge", 0.4))).toBe(0);
  });

  test("has iron, cap iron and wedge drawn up the bed, the wedge first, the front block toward the toe, the bed where it is", () => {
    for (const part of ["iron", "cap-iron", "cap-screw", "wedge"]) {
      const [x, y, z] = at(part, 1);
      expect(Math.atan2(y, x), part).toBeCloseTo((bed * Math.PI) / 180, 9);
      expect(z).toBe(0);
    }
    expect(at("cap-iron", 1)).toEqual(at("iron", 1));
    expect(Math.hypot(...at("wedge", 1))).toBeGreaterThan(Math.hypot(...at("iron", 1)));
    expect(at("front-block", 1)[0]).toBeLessThan(0);
    expect(at("front-block", 1).slice(1)).toEqual([0, 0]);
    expect(at("bed-block", 1)).toEqual([0, 0, 0]);
  });

  test("has the heart of the tree square to the grain: below flat sawn wood, beside quarter sawn", () => {
    const tones = { ink: [], shadow: [], of: () => ({ tone: [1], lines: [2] }) } as unknown as Tones;
    const heart = (part: string, rings: number, grain: [number, number, number] = [1, 0, 0]) =>
      makePartLook(part, grain, rings, tones).heart;
    const [flat, quarter] = [heart("bed-block", 0), heart("bed-block", 90)];
    expect(flat[1]).toBeLessThan(-100);
    expect([flat[0], Math.abs(flat[2])]).toEqual([0, expect.closeTo(0, 9)]);
    expect(quarter[2]).toBeGreaterThan(100);
    expect(Math.abs(quarter[1])).toBeLessThan(1e-9);
    const grain: [number, number, number] = [Math.cos(0.8), Math.sin(0.8), 0];
    const [x, y] = heart("wedge", 20, grain);
    expect(x * grain[0] + y * grain[1]).toBeCloseTo(0, 9);
    expect(y).toBeLessThan(0);
    expect(heart("cross-pin", 0, [0, 0, 1])[1]).toBeLessThan(-100);
    expect(heart("cross-pin", 70, [0, 0, 1])[2]).toBe(0);
    const hatches = PARTS.map((part) => JSON.stringify(makePartLook(part, [1, 0, 0], 0, tones).hatch));
    const cut = ["front-block", "bed-block", "iron", "cap-iron", "wedge", "cross-pin"].map(
      (part) => hatches[PARTS.indexOf(part)],
    );
    expect(new Set(cut).size).toBe(cut.length); // neighbours are told apart, ISO 128-3
  });
});

test("each pen line is a quad of two triangles with both ends at each corner, and none is seen without lines", () => {
  const lines = createPenLines(1.4, new Vector2(800, 600));
  const ends = Float32Array.from([1, 2, 3, 4, 5, 6, 10, 20, 30, 40, 50, 60]);
  lines.set(ends);
  const { geometry } = lines.mesh;
  const read = (name: string) => geometry.getAttribute(name);
  expect([read("position").count, read("end").count, read("corner").count, geometry.index!.count]).toEqual([
    8, 8, 8, 12,
  ]);
  for (let i = 0; i < 8; i++) {
    const from = Math.floor(i / 4) * 6;
    const at = (name: string) => [read(name).getX(i), read(name).getY(i), read(name).getZ(i)];
    expect([...at("position"), ...at("end")]).toEqual([...ends.subarray(from, from + 6)]);
  }
  for (const line of [0, 1]) {
    const corner = (k: number) => {
      const i = geometry.index!.getX(6 * line + k);
      expect(Math.floor(i / 4)).toBe(line);
      return { x: read("corner").getX(i), y: read("corner").getY(i) };
    };
    const triangles = [0, 3].map((first) => [corner(first), corner(first + 1), corner(first + 2)] as const);
    const area = triangles.map(([a, b, c]) => ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / 2);
    expect(area).toEqual([2, 2]); // together the whole square from -1 to 1
  }
  expect(lines.mesh.visible).toBe(true);
  lines.set(new Float32Array());
  expect(lines.mesh.visible).toBe(false);
});
