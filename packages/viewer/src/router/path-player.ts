// Time of a program as it is played: forward by the clock, or from pass to pass where the maker wants nothing to move.
import { stepAt } from "./place-on-path.ts";
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
const wantsStillness = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

/** @param changed called for every new time, and when playing begins or ends */
export function createPathPlayer(changed: (step: number, seconds: number, isPlaying: boolean) => void): PathPlayer {
  let path: RouterPath | undefined;
  let [seconds, speed, frame, timer] = [0, 10, 0, 0];
  const isPlaying = () => frame !== 0 || timer !== 0;
  const tell = () => path && changed(stepAt(path.steps, seconds), seconds, isPlaying());

  function stop() {
    cancelAnimationFrame(frame);
    clearInterval(timer);
    [frame, timer] = [0, 0];
  }
  function set(next: number) {
    seconds = Math.min(path?.duration ?? 0, Math.max(0, next));
    tell();
  }
  function goByPass(direction: 1 | -1) {
    if (!path) return;
    const { steps, passes, duration } = path;
    const ends = passes.map((i) => steps[i]!.begin);
    const next =
      direction > 0
        ? (ends.find((end) => end > seconds + 1e-6) ?? duration)
        : (ends.findLast((end) => end < seconds - 1e-6) ?? 0);
    set(next);
  }
  function run(last: number) {
    frame = requestAnimationFrame((now) => {
      if (!path) return;
      const next = seconds + ((now - last) / 1000) * speed;
      if (next >= path.duration) stop();
      else run(now);
      set(next);
    });
  }
  function play() {
    if (!path) return;
    if (seconds >= path.duration) seconds = 0;
    if (!wantsStillness()) return run(performance.now());
    timer = window.setInterval(() => {
      if (path && seconds >= path.duration) stop();
      goByPass(1);
    }, PACE);
  }
  return {
    get isPlaying() {
      return isPlaying();
    },
    get seconds() {
      return seconds;
    },
    open(next) {
      stop();
      path = next;
      set(0);
    },
    goTo(next) {
      stop();
      set(next);
    },
    goBy(count) {
      stop();
      if (!path) return;
      const step = stepAt(path.steps, seconds);
      const isWithin = seconds > path.steps[step]!.begin + 1e-6;
      const next = count < 0 && isWithin ? step + count + 1 : step + count;
      set(path.steps[Math.max(0, next)]?.begin ?? path.duration);
    },
    goByPass(direction) {
      stop();
      goByPass(direction);
    },
    toggle() {
      if (isPlaying()) stop();
      else play();
      tell();
    },
    stop() {
      stop();
      tell();
    },
    setSpeed(next) {
      speed = next;
    },
  };
}
