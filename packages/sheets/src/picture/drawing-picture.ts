// A part's drawing as a picture: each kind of work has its kind of line, as on the layers of its DXF.

import type { Drawing, DrawingEntry, WorkKind } from "@lamplane/parameters/drawings";
import { PICTURE } from "../words/layout.ts";
import { Marks } from "./marks.ts";
import type { LineKind, Picture } from "./picture.ts";
import { framePicture } from "./picture-frame.ts";

const LINES: Readonly<Record<Exclude<WorkKind, "NOTE">, LineKind>> = {
  CUT: "outline",
  DRILL: "outline",
  ROUT: "cut",
  MARK: "mark",
  ENGRAVE: "mark",
};
const DESCRIPTION = PICTURE.drawing;

/** The same drawing for eyes: outlines, drilled circles with their centre lines, routed and marked lines, notes. */
export function drawingPicture(drawing: Drawing): Picture {
  const marks = new Marks();
  for (const entry of drawing.entries) drawEntry(marks, entry);
  const title = PICTURE.fullSize({ what: drawing.title.replaceAll("-", " ") });
  return framePicture({ name: drawing.title, title, description: DESCRIPTION }, marks.all);
}

function drawEntry(marks: Marks, entry: DrawingEntry): void {
  if (entry.kind === "note") {
    marks.text(entry.text, entry.at, { size: entry.height });
    return;
  }
  const line = entry.work === "NOTE" ? "thin" : LINES[entry.work];
  if (entry.kind === "outline") marks.outline(line, entry.outline);
  else if (entry.kind === "path") marks.line(line, ...entry.segments);
  else {
    marks.circle(line, entry.circle.centre, entry.circle.radius);
    if (entry.work === "DRILL") marks.cross(entry.circle.centre, entry.circle.radius);
  }
}
