// How the body is posed: what it is made of, how far it is opened, whether it is cut.
import type { BodyInfo } from "../protocol/body-data.ts";

export interface BodyState extends BodyInfo {
  /** 0 together, 1 as far apart as it goes. */
  readonly open: number;
  readonly isCut: boolean;
}

/** Before the first design. */
export const INITIAL_STATE: BodyState = { open: 0, isCut: false, rings: 20, bedAngle: 47, bodyWidth: 66 };
