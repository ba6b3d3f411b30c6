// The cross pin settles in its holes: worked by hand, and by the wedge pushed into an elevation whose pin is moved.
import { pinSeat } from "@lamplane/bench";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";

test("a clearance of 0.2 under a wedge of 6°: 0.1 / cos 6 of thickness, 0.1 / sin 6 of travel", () => {
  const seat = pinSeat(elevation(designWith({ ...WORKED, "pin.tenonClearance": 0.2, "body.cheek": 8 })));
  expect(seat.gives).toBeCloseTo(0.1, 12);
  expect(seat.wedgeThicker).toBeCloseTo(0.1 / 0.9945219, 7);
  expect(seat.wedgeFurtherIn).toBeCloseTo(0.1 / 0.1045285, 6);
  expect(seat.follows).toBeCloseTo((0.2 * 49.6) / 57.6, 12);
});

test("moved square to the wedge's upper side, the pin is met by the same wedge, so much further in", () => {
  const design = designWith({ ...WORKED, "pin.tenonClearance": 0.4 });
  const { wedgeFurtherIn } = pinSeat(elevation(design));
  const pushedIn = designWith({ ...WORKED, "wedge.tipFromEdge": design.wedge.tipFromEdge - wedgeFurtherIn });
  const offUpperSide = (plane: ReturnType<typeof elevation>, x: number, y: number) => {
    const [, , butt, tip] = plane.wedge.map(({ from }) => from);
    const [dx, dy] = [tip!.x - butt!.x, tip!.y - butt!.y];
    return Math.abs((x - butt!.x) * dy - (y - butt!.y) * dx) / Math.hypot(dx, dy);
  };
  const { x, y } = elevation(design).pin.centre;
  const [before, after] = [offUpperSide(elevation(design), x, y), offUpperSide(elevation(pushedIn), x, y)];
  expect(before).toBeCloseTo(12.7 / 2, 9);
  expect(before - after).toBeCloseTo(0.2, 9);
});
