// A stretch of a straight line.

/** From one place to another along a line, mm. */
export interface Span {
  readonly from: number;
  readonly to: number;
}
