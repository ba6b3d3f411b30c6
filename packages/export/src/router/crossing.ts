// Outlines that cross themselves: no cutter goes round what is neither inside nor out.
import { intersections, type Outline, segmentLength } from "@lamplane/geometry";

/** A crossing nearer to the end of a segment than this share of it is where two segments meet. */
const AT_END = 1e-6;

/** Length of the longest loop that an outline makes beyond a crossing with itself, the shorter way round, mm; 0 for none. */
export function crossedLoop(outline: Outline): number {
  const lengths = outline.map(segmentLength);
  const begin = lengths.map((_, i) => lengths.slice(0, i).reduce((sum, length) => sum + length, 0));
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  const isWithin = (share: number) => share > AT_END && share < 1 - AT_END;
  const loops = outline.flatMap((a, i) =>
    outline.slice(i + 1).flatMap((b, k) =>
      intersections(a, b)
        .filter(({ shareOfFirst, shareOfSecond }) => isWithin(shareOfFirst) && isWithin(shareOfSecond))
        .map(({ shareOfFirst, shareOfSecond }) => {
          const j = i + 1 + k;
          const loop = begin[j]! + shareOfSecond * lengths[j]! - begin[i]! - shareOfFirst * lengths[i]!;
          return Math.min(loop, whole - loop);
        }),
    ),
  );
  return Math.max(0, ...loops);
}
