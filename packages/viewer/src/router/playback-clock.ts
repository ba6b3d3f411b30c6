// What drives playing: each frame of the screen, or a slow beat where nothing may move.

export interface PlaybackClock {
  isRunning(): boolean;
  /** @param tick gets the seconds since the frame before */
  byFrame(tick: (elapsed: number) => void): void;
  byBeat(milliseconds: number, beat: () => void): void;
  stop(): void;
}

export function createPlaybackClock(): PlaybackClock {
  let [frame, timer] = [0, 0];
  function nextFrame(last: number, tick: (elapsed: number) => void) {
    frame = requestAnimationFrame((now) => {
      nextFrame(now, tick);
      tick((now - last) / 1000);
    });
  }
  return {
    isRunning: () => frame !== 0 || timer !== 0,
    byFrame: (tick) => nextFrame(performance.now(), tick),
    byBeat(milliseconds, beat) {
      timer = window.setInterval(beat, milliseconds);
    },
    stop() {
      cancelAnimationFrame(frame);
      clearInterval(timer);
      [frame, timer] = [0, 0];
    },
  };
}
