// The plane from the side by joins and meets of lines alone: a second way to the figures, with irons of any taper.
import type { PinSize } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { apart, at, cross, direction, type Homogeneous, offLine, parallel, place, squareTo } from "./line-geometry.ts";

/** Thickness at the edge, and slope of the face against the back, of an iron that lies on its back along x from under its edge, through what a caliper reads at two places. */
export function readIron({ iron }: Design): { thickness: number; slope: number } {
  const low = at(iron.thicknessFromEdge, iron.thickness);
  const high =
    iron.thicknessAtTop === "auto"
      ? at(
          iron.thicknessFromEdge + 1,
          iron.thickness - Math.tan((Number(iron.taper === "auto" ? 0 : iron.taper) * Math.PI) / 180),
        )
      : at(iron.topFromEdge === "auto" ? iron.length : iron.topFromEdge, iron.thicknessAtTop);
  const face = cross(low, high);
  const heightAt = (x: number) => place(cross(face, cross(at(x, 0), [0, 1, 0]))).y;
  return { thickness: heightAt(0), slope: heightAt(1) - heightAt(0) };
}

/** A straight ramp and a flat top. */
export function planeByLines(design: Design, pinSize: PinSize, pinHeight: number, rampAngle: number, mouthX: number) {
  const { bed, wedge, capIron, pin, iron, sole, body, mouth } = design;
  const { thickness, slope } = readIron(design);
  const [trued, blank, top] = [0, -sole.allowance, body.height].map((y) => cross(at(0, y), [1, 0, 0]));
  const edge = at(mouthX, 0);
  const alongBed = cross(edge, direction(bed.angle)); // through the edge; toe and up lie on its left
  const bedLine = parallel(alongBed, -thickness);
  const under = cross(bedLine, squareTo(bedLine, edge));
  /** Places on the iron, by how far up its back and how far off it. */
  const onIron = (up: number, off: number) => {
    const { x, y } = place(under);
    const [c, s] = direction(bed.angle);
    return at(x + up * c - off * s, y + up * s + off * c);
  };
  const face = cross(onIron(0, thickness), onIron(100, thickness + 100 * slope));
  const upFace = direction((Math.atan2(-face[0], face[1]) * 180) / Math.PI);
  const faceAngle = (Math.atan2(upFace[1], upFace[0]) * 180) / Math.PI;
  const wedgeLower = parallel(face, capIron.thickness);
  const tipAcross = squareTo(face, at(place(edge).x + wedge.tipFromEdge * upFace[0], wedge.tipFromEdge * upFace[1]));
  const wedgeTip = cross(parallel(wedgeLower, wedge.tip), tipAcross);
  const wedgeUpper = cross(wedgeTip, direction(faceAngle + wedge.angle));
  const pinCentre = cross(parallel(wedgeUpper, pinSize.diameter / 2), cross(at(0, pinHeight), [1, 0, 0]));
  const across = squareTo(face, pinCentre);
  const rampFoot = at(mouthX - mouth.opening, 0);
  const ramp = cross(rampFoot, direction(180 - rampAngle));
  const bevel = cross(edge, direction(faceAngle - iron.bevel));
  const heel = cross(bevel, bedLine);
  const [bedTip, rampTip] = [cross(bedLine, blank!), cross(ramp, blank!)];
  const x = (p: Homogeneous) => place(p).x;
  const hole = (pinSize.tenon + pin.tenonClearance) / 2;
  const up = (from: Homogeneous, to: Homogeneous) => -offLine(squareTo(alongBed, from), to);
  // The edge set to a sole 1 mm further up: it moves along the bed, the ramp stays.
  const edgeLater = cross(alongBed, cross(at(0, 1), [1, 0, 0]));
  return {
    edgeThickness: thickness,
    faceAngle,
    bedTipFromEnd: x(bedTip) + body.trim / 2,
    rampTipFromEnd: x(rampTip) + body.trim / 2,
    glueGap: x(bedTip) - x(rampTip),
    mouthGrowth: x(edgeLater) - x(cross(ramp, cross(at(0, 1), [1, 0, 0]))) - mouth.opening,
    throatAtTop: x(cross(bedLine, top!)) - x(cross(ramp, top!)),
    unsupported: up(cross(bedLine, trued!), heel),
    clearanceAngle: faceAngle - iron.bevel,
    pinS: apart(edge, cross(face, across)),
    pinV: offLine(face, pinCentre),
    pinFromEnd: x(pinCentre) + body.trim / 2,
    wedgeAtPin: apart(cross(wedgeLower, across), cross(wedgeUpper, across)),
    pinToRamp: -offLine(ramp, pinCentre) - pinSize.diameter / 2,
    shearOut: apart(pinCentre, cross(squareTo(wedgeUpper, pinCentre), top!)) - hole,
    woodOverPinHole: body.height - pinHeight - hole,
  };
}
