// How long a change takes until it is drawn, ms: kept in the page so that the bench can read it (`performance.getEntriesByName`).

export class LatencyTimer {
  readonly #starts = new Map<number, number>();

  begin(requestId: number): void {
    this.#starts.set(requestId, performance.now());
    if (this.#starts.size > 200) this.#starts.delete(this.#starts.keys().next().value!);
  }

  /** A request that was overtaken is never drawn, and never finished. */
  finish(what: "elevation" | "details" | "words" | "solid", requestId: number): void {
    const start = this.#starts.get(requestId);
    if (start !== undefined) performance.measure(`lamplane ${what}`, { start, end: performance.now() });
  }
}
