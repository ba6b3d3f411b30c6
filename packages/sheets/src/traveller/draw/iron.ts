// The iron with its cap iron lying on the table, and what is measured on it.
import { cotDeg, line, point, polygon } from "@lamplane/geometry";
import { capIronSurface } from "@lamplane/parameters/elevation";
import { boxPolygon, composeViews, type Sketch, scaledView } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { STEEL_SHADE } from "./stack.ts";

export function ironPicture(t: StepContext) {
  return composeViews({ name: "step-iron", title: "Iron and cap iron: what is measured on them" }, [
    scaledView("Iron on its bevel's side, edge to the left", { width: 100, height: 50 }, (sketch) =>
      drawSide(sketch, t),
    ),
    scaledView("Iron's face", { width: 78, height: 50 }, (sketch) => {
      const { width, length } = t.design.iron;
      sketch.area(STEEL_SHADE, boxPolygon(0, 0, length, width)).outline("outline", boxPolygon(0, 0, length, width));
      sketch.upright(t.ruled(width), point(length, 0), point(length, width), "right");
      sketch.name("left", [{ words: "edge", point: point(0, 0.5 * width) }]);
    }),
  ]);
}

function drawSide(sketch: Sketch, t: StepContext): void {
  const { iron, capIron } = t.plane.design;
  const drawnTo = Math.min(iron.length, Math.max(70, capIron.screwHead.fromEdge + 20));
  const [thick, heel] = [iron.thickness, iron.thickness * cotDeg(iron.bevel)];
  const body = polygon(point(0, 0), point(heel, -thick), point(drawnTo, -thick), point(drawnTo, 0));
  sketch.area(STEEL_SHADE, body).outline("outline", body);
  if (capIron.thickness > 0) {
    const upper = capIronSurface(t.plane.design);
    const cap = polygon(
      point(upper[0]!.x, 0),
      point(drawnTo, 0),
      point(drawnTo, capIron.thickness),
      ...[...upper].reverse(),
    );
    sketch.area(0.18, cap).outline("outline", cap);
  }
  const { fromEdge, diameter, height } = capIron.screwHead;
  if (t.plane.recess) {
    const [low, high] = [fromEdge - diameter / 2, fromEdge + diameter / 2];
    sketch.outline("outline", boxPolygon(low, -thick - height, high, -thick));
    sketch.line("axis", line(point(fromEdge, -thick - height - 1), point(fromEdge, capIron.thickness + 1)));
    sketch.level(t.ruled(fromEdge), point(0, 0), point(fromEdge, capIron.thickness), "above");
  }
  sketch.upright(t.ruled(thick), point(drawnTo, -thick), point(drawnTo, 0), "right");
  if (capIron.thickness > 0)
    sketch.name("right", [
      { words: `cap iron ${t.mm(capIron.thickness)}`, point: point(drawnTo, capIron.thickness / 2) },
    ]);
  sketch.angle(t.deg(iron.bevel), point(0, 0), -iron.bevel, 0, 12);
}
