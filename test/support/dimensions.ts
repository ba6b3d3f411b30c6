// The dimensions of a picture as an eye reads them: two arrow heads on a line, and the words that stand nearest to it.
import type { Picture, PictureMark } from "@lamplane/sheets";

interface Place {
  readonly x: number;
  readonly y: number;
}

export interface ReadDimension {
  readonly words: string;
  /** Points of the arrows. */
  readonly ends: readonly [Place, Place];
  readonly isLevel: boolean;
  /** Where the lines begin that lead from the thing to the arrows, for those that have one. */
  readonly feet: readonly Place[];
  /** Between the arrows, mm on the paper. */
  readonly length: number;
}

/** A number with the unit of the sheet: "92.28", "2 3/8 in (2.368)", "crown 108.63, 58 high"; undefined where words end in none. */
export function lengthIn(written: string): number | undefined {
  const words = written.replace(/, [^,]* high$/, "");
  const [, whole, top, bottom, exact] =
    /(?:^| )(?:(\d+(?:\.\d+)?) ?)??(?:(\d+)\/(\d+))?[+−]? in(?: \(([\d.]+)\))?$/.exec(words) ?? [];
  if (exact !== undefined) return Number(exact) * 25.4;
  if (whole !== undefined || top !== undefined)
    return (Number(whole ?? 0) + (top === undefined ? 0 : Number(top) / Number(bottom))) * 25.4;
  const [, metric] = /(?:^| )(\d+(?:\.\d+)?)(?: mm)?$/.exec(words) ?? [];
  return metric === undefined ? undefined : Number(metric);
}

const isHead = (mark: PictureMark | undefined): mark is Extract<PictureMark, { kind: "area" }> =>
  mark?.kind === "area" && mark.shade === 1 && mark.boundaries.length === 1 && mark.boundaries[0]!.length === 3;

/** Where the two edges of the same length meet. */
function tipOf({ boundaries }: Extract<PictureMark, { kind: "area" }>): Place {
  const [a, b, c] = boundaries[0]!;
  const length = (s: typeof a) => Math.hypot(s!.to.x - s!.from.x, s!.to.y - s!.from.y);
  if (Math.abs(length(a) - length(c)) < 1e-6) return a!.from;
  return Math.abs(length(a) - length(b)) < 1e-6 ? b!.from : c!.from;
}

/** Every dimension that is level or upright; a double arrow whose words are no length is none. */
export function dimensionsOf({ marks }: Picture): ReadDimension[] {
  const texts = marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));
  return marks.flatMap((mark, i): ReadDimension[] => {
    const [first, second] = [marks[i + 1], marks[i + 2]];
    if (mark.kind !== "line" || mark.line !== "thin" || mark.segments.length !== 1) return [];
    if (!isHead(first) || !isHead(second) || mark.segments[0]!.kind !== "line") return [];
    const ends = [tipOf(first), tipOf(second)] as const;
    const [wide, high] = [Math.abs(ends[1].x - ends[0].x), Math.abs(ends[1].y - ends[0].y)];
    if (Math.min(wide, high) > 1e-6) return [];
    const isLevel = wide > high;
    const { from, to } = mark.segments[0]!;
    const nearest = texts.reduce<{ words: string; off: number } | undefined>((best, { text, at }) => {
      const off = distanceTo(at, from, to);
      return best && best.off <= off ? best : { words: text, off };
    }, undefined);
    return nearest && /\d/.test(nearest.words)
      ? [{ words: nearest.words, ends, isLevel, feet: feetOf(marks, ends, isLevel), length: Math.max(wide, high) }]
      : [];
  });
}

/** Of the thin lines square to a dimension that run past one of its arrows, the end that lies further off. */
function feetOf(marks: Picture["marks"], ends: ReadDimension["ends"], isLevel: boolean): Place[] {
  const [along, across] = isLevel ? (["x", "y"] as const) : (["y", "x"] as const);
  return marks.flatMap((mark) => {
    const [segment] = mark.kind === "line" && mark.line === "thin" && mark.segments.length === 1 ? mark.segments : [];
    if (segment?.kind !== "line") return [];
    const { from, to } = segment;
    const passes = ends.some(
      (tip) =>
        Math.abs(from[along] - tip[along]) < 1e-6 &&
        Math.abs(to[along] - tip[along]) < 1e-6 &&
        (from[across] - tip[across]) * (to[across] - tip[across]) < 0 &&
        Math.abs(to[across] - tip[across]) < 2,
    );
    return passes ? [from] : [];
  });
}

function distanceTo(p: Place, a: Place, b: Place): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy);
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
