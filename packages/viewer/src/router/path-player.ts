// Time of a program as it is played: forward by the clock, or from pass to pass where the maker wants nothing to move.
import { stepAt } from "./place-on-path.ts";
import { createPlaybackClock } from "./playback-clock.ts";
import type { RouterPath } from "./router-paths.ts";

export interface PathPlayer {
  readonly isPlaying: boolean;
  readonly seconds: number;
  open(path: RouterPath): void;
  goTo(seconds: number): void;
  /** Steps forward or back. */
  goBy(steps: number): void;
  /** To the pass before or the next one. */
  goByPass(direction: 1 | -1): void;
  toggle(): void;
  stop(): void;
  setSpeed(speed: number): void;
}

/** ms that a pass is shown where nothing may move. */
const PACE = 1200;
/** s: two times nearer than this are one. */
const SAME_TIME = 1e-6;
const wantsStillness = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

/** @param changed called for every new time, and when playing begins or ends */
export function createPathPlayer(changed: (step: number, seconds: number, isPlaying: boolean) => void): PathPlayer {
  let path: RouterPath | undefined;
  let [seconds, speed] = [0, 10];
  const clock = createPlaybackClock();
  const notify = () => path && changed(stepAt(path.steps, seconds), seconds, clock.isRunning());

  function set(next: number) {
    seconds = Math.min(path?.duration ?? 0, Math.max(0, next));
    notify();
  }
  function goTo(next: number) {
    clock.stop();
    set(next);
  }
  function play(path: RouterPath) {
    const stopAtEnd = (time: number) => time >= path.duration && clock.stop();
    if (seconds >= path.duration) seconds = 0;
    if (wantsStillness())
      clock.byBeat(PACE, () => {
        stopAtEnd(seconds); // the end is shown for a beat too
        set(passFrom(path, seconds, 1));
      });
    else
      clock.byFrame((elapsed) => {
        const next = seconds + elapsed * speed;
        stopAtEnd(next);
        set(next);
      });
  }

  return {
    get isPlaying() {
      return clock.isRunning();
    },
    get seconds() {
      return seconds;
    },
    open(next) {
      clock.stop();
      path = next;
      set(0);
    },
    goTo,
    goBy: (steps) => path && goTo(stepFrom(path, seconds, steps)),
    goByPass: (direction) => path && goTo(passFrom(path, seconds, direction)),
    toggle() {
      if (clock.isRunning()) clock.stop();
      else if (path) play(path);
      notify();
    },
    stop() {
      clock.stop();
      notify();
    },
    setSpeed(next) {
      speed = next;
    },
  };
}

/** Where the step begins that lies so many steps on; back from within a step, its own beginning is the first. */
function stepFrom({ steps, duration }: RouterPath, seconds: number, count: number): number {
  const step = stepAt(steps, seconds);
  const begin = steps[step]?.begin ?? 0;
  const isWithin = seconds > begin + SAME_TIME;
  const next = count < 0 && isWithin ? step + count + 1 : step + count;
  return steps[Math.max(0, next)]?.begin ?? duration;
}

/** Where the next pass begins, or the one before; the end of the program after the last, its beginning before the first. */
function passFrom({ steps, passes, duration }: RouterPath, seconds: number, direction: 1 | -1): number {
  const begins = passes.flatMap((i) => steps[i]?.begin ?? []);
  return direction > 0
    ? (begins.find((begin) => begin > seconds + SAME_TIME) ?? duration)
    : (begins.findLast((begin) => begin < seconds - SAME_TIME) ?? 0);
}
