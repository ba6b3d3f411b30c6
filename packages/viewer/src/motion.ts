// Whether and for how long things move from one step to the next; nothing does for who has asked for stillness.

/** ms from one step of the build to the next: shorter than a step is shown while it is played. */
export const STEP_TIME = 450;

export const wantsMotion = (): boolean => !matchMedia("(prefers-reduced-motion: reduce)").matches;
