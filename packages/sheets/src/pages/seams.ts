// Where the tiles of a large picture are parted: as evenly as it goes, but through no cut and no mark.
import { type Segment, tessellate } from "@lamplane/geometry";
import type { Picture, PictureMark } from "../picture/picture.ts";
import { textCorners } from "../picture/picture-frame.ts";

/** Overlap of two tiles, mm: enough to glue, and to see the neighbour's edge by. */
export const OVERLAP = 12;
/** How near a seam may come to a cut or a mark, mm. */
const CLEAR = 3;
/** A line that leans from square to a seam by less may run over it: it is read across the joint. Tangent of 20°. */
const ALONG = 0.36;
/** Shortest tile, mm. */
const LEAST_TILE = 40;
/** A seam is tried at each of these, mm. */
const STEP = 1;
/** What a crossed word costs beside a crossed cut, and a mm that a seam stands off even spans. */
const COST = { cut: 1e6, word: 1e3 };

interface Range {
  readonly low: number;
  readonly high: number;
}

/** What seams should not run through, from the picture's left, or from its top. mm */
export interface SeamObstacles {
  readonly cuts: readonly Range[];
  readonly words: readonly Range[];
}
const NONE: SeamObstacles = { cuts: [], words: [] };

export interface SeamSpan {
  readonly from: number;
  readonly length: number;
}

/** Spans of a length, and how many cuts and marks their seams come too near to. */
export interface Spans {
  readonly spans: readonly SeamSpan[];
  readonly crossings: number;
}

/** Cuts and marks of a picture that a seam would part, and its words: for upright seams along x, for level ones from the top. */
export function seamObstacles({ marks, height }: Picture, seam: "upright" | "level"): SeamObstacles {
  const along = (p: { x: number; y: number }) => (seam === "upright" ? p.x : height - p.y);
  const across = (p: { x: number; y: number }) => (seam === "upright" ? p.y : p.x);
  const cuts = marks.flatMap(workLines).flatMap((s) => {
    const ends = [...tessellate([s], 0.05), s.to];
    return ends.slice(1).flatMap((to, i): Range[] => {
      const [a, b] = [along(ends[i]!), along(to)];
      const rise = Math.abs(across(to) - across(ends[i]!));
      return rise <= ALONG * Math.abs(b - a) ? [] : [{ low: Math.min(a, b) - CLEAR, high: Math.max(a, b) + CLEAR }];
    });
  });
  const words = marks.flatMap((mark) => {
    if (mark.kind !== "text" || mark.text === "") return [];
    const places = textCorners(mark).map(along);
    return [{ low: Math.min(...places), high: Math.max(...places) }];
  });
  return { cuts, words };
}

/** Lines that are sawn, shaped, drilled or pencilled by; dimensions, grids and what only lies there are none. */
const workLines = (mark: PictureMark): readonly Segment[] =>
  mark.kind === "line" && WORK.has(mark.line) ? mark.segments : [];
const WORK: ReadonlySet<string> = new Set(["outline", "hidden", "cut", "mark"]);

/**
 * Spans that cover a length, each at most `room` long, neighbours overlapping by `OVERLAP`; one where it fits. Even ones where
 * their seams are free; else those whose seams are, with one span more at the most.
 */
export function splitLength(length: number, room: number, obstacles: SeamObstacles = NONE): Spans {
  if (length <= room) return { spans: [{ from: 0, length }], crossings: 0 };
  const least = Math.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9);
  const even = evenSeams(length, least);
  if (even.every((at) => seamCost(at, obstacles) === 0)) return spansOf(length, even, obstacles);
  const few = spansOf(length, cheapestSeams(length, room, least, obstacles) ?? even, obstacles);
  if (few.crossings === 0) return few;
  const more = cheapestSeams(length, room, least + 1, obstacles);
  const many = more && spansOf(length, more, obstacles);
  return many && many.crossings < few.crossings ? many : few;
}

const evenSeams = (length: number, count: number): number[] => {
  const each = (length + (count - 1) * OVERLAP) / count;
  return Array.from({ length: count - 1 }, (_, i) => (i + 1) * (each - OVERLAP));
};

/** A seam is where the later tile begins; it is trimmed there and laid over the earlier one. */
function spansOf(length: number, seams: readonly number[], { cuts }: SeamObstacles): Spans {
  const starts = [0, ...seams];
  const spans = starts.map((from, i) => {
    const to = i === seams.length ? length : seams[i]! + OVERLAP;
    return { from, length: to - from };
  });
  return { spans, crossings: seams.reduce((sum, at) => sum + countIn(cuts, at), 0) };
}

const countIn = (ranges: readonly Range[], at: number): number =>
  ranges.filter(({ low, high }) => low < at && at < high).length;

const seamCost = (at: number, { cuts, words }: SeamObstacles): number =>
  COST.cut * countIn(cuts, at) + COST.word * countIn(words, at);

interface Way {
  readonly seams: readonly number[];
  readonly cost: number;
}

/** Places of the seams that cost least, seam by seam from the first; none where so many spans cannot cover the length. */
function cheapestSeams(length: number, room: number, count: number, obstacles: SeamObstacles): number[] | undefined {
  const even = evenSeams(length, count);
  const places = Array.from({ length: Math.floor(length / STEP) }, (_, i) => (i + 1) * STEP);
  let ways: readonly Way[] = [{ seams: [], cost: 0 }];
  for (const wanted of even)
    ways = places.flatMap((at): Way[] => {
      const before = ways.filter(({ seams }) => {
        const span = at + OVERLAP - (seams.at(-1) ?? 0);
        return span <= room && span >= LEAST_TILE;
      });
      const best = before.reduce<Way | undefined>((low, way) => (low && low.cost <= way.cost ? low : way), undefined);
      const cost = seamCost(at, obstacles) + Math.abs(at - wanted);
      return best ? [{ seams: [...best.seams, at], cost: best.cost + cost }] : [];
    });
  const whole = ways.filter(({ seams }) => {
    const rest = length - seams.at(-1)!;
    return rest <= room && rest >= LEAST_TILE;
  });
  return whole
    .reduce<Way | undefined>((low, way) => (low && low.cost <= way.cost ? low : way), undefined)
    ?.seams.slice();
}
