// How long a change takes until it is drawn, ms: kept in the page so that the bench can read it (`performance.getEntriesByName`).

export class Clock {
  readonly #asked = new Map<number, number>();

  asked(turn: number): void {
    this.#asked.set(turn, performance.now());
    if (this.#asked.size > 200) this.#asked.delete(this.#asked.keys().next().value!);
  }

  /** A turn that was overtaken is never drawn, and never told. */
  drew(what: "elevation" | "words" | "solid", turn: number): void {
    const start = this.#asked.get(turn);
    if (start !== undefined) performance.measure(`lamplane ${what}`, { start, end: performance.now() });
  }
}
