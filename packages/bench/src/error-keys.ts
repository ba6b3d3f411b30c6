// The errors that the work can make, each by name.

/** What is off, as made less as planned; mm, angles in degrees. */
export interface Errors {
  /** Iron thicker than it was read. */
  ironThickness: number;
  /** Tapered iron thicker near its top than it was read. */
  ironTopThickness: number;
  capIronThickness: number;
  /** Bed steeper than planned, turned about its tip on the blank's sole. */
  bedAngle: number;
  /** Ramp, or a curved ramp's wear, steeper than planned, turned about its tip on the blank's sole. */
  rampAngle: number;
  /** Wood left standing on a curved ramp, square to it. */
  rampForm: number;
  /** Pin's hole nearer the heel. */
  pinHoleAlong: number;
  /** Pin's hole higher. */
  pinHoleUp: number;
  pinDepth: number;
  wedgeTaper: number;
  wedgeThickness: number;
  /** Bed block's tip nearer the heel. */
  bedPlace: number;
  /** Front block's tip nearer the heel than its mark. */
  frontPlace: number;
  /** Edge higher over the blank's sole at contact. */
  edgeHeight: number;
  /** Front block nearer the heel than it was fitted. */
  creep: number;
  /** More wood planed off the sole than was to come off. */
  soleTaken: number;
}
export type ErrorKey = keyof Errors;
