// The body opens and closes as its step asks, in the time in which the elevation goes from one step to the next.
import { STEP_TIME, wantsMotion } from "../motion.ts";

export interface OpeningMotion {
  /** From one opening to another, 0 to 1. */
  go(from: number, to: number): void;
  /** Leaves it where it is: a hand has taken over. */
  stop(): void;
}

/** @param pose sets the body to an opening, 0 to 1 */
export function createOpeningMotion(pose: (open: number) => void): OpeningMotion {
  let frame = 0;
  const stop = () => cancelAnimationFrame(frame);
  return {
    stop,
    go(from, to) {
      stop();
      if (!wantsMotion()) return pose(to);
      pose(from);
      const begin = performance.now();
      const next = (now: number) => {
        const share = Math.min(1, Math.max(0, (now - begin) / STEP_TIME));
        pose(from + (to - from) * easeInOut(share));
        if (share < 1) frame = requestAnimationFrame(next);
      };
      frame = requestAnimationFrame(next);
    },
  };
}

const easeInOut = (share: number): number => share * share * (3 - 2 * share);
