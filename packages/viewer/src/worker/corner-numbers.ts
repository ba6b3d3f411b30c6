// Numbers for corners: the same corner always gets the same number. Neighbours share corners to the last bit, so bits are compared.
import type { Vec3 } from "@lamplane/parameters/solids";

/** A table of corners for up to `most` of them: open addressing, a quarter full at most. */
export class CornerNumbers {
  readonly #slots: Int32Array;
  readonly #mask: number;
  readonly #corners: Float64Array;
  readonly #bits = new Float64Array(1);
  readonly #words = new Uint32Array(this.#bits.buffer);
  #count = 0;

  constructor(most: number) {
    const size = 2 ** Math.ceil(Math.log2(4 * Math.max(most, 1)));
    this.#slots = new Int32Array(size).fill(-1);
    this.#mask = size - 1;
    this.#corners = new Float64Array(most * 3);
  }

  of([x, y, z]: Vec3): number {
    let slot =
      (this.#mixed(x) ^ Math.imul(this.#mixed(y), 0x9e3779b1) ^ Math.imul(this.#mixed(z), 0x85ebca6b)) & this.#mask;
    for (;;) {
      const known = this.#slots[slot]!;
      if (known < 0) return this.#added(slot, x, y, z);
      const at = known * 3;
      if (this.#corners[at] === x && this.#corners[at + 1] === y && this.#corners[at + 2] === z) return known;
      slot = (slot + 1) & this.#mask;
    }
  }

  #added(slot: number, x: number, y: number, z: number): number {
    const number = this.#count++;
    this.#slots[slot] = number;
    this.#corners.set([x, y, z], number * 3);
    return number;
  }

  /** Both halves of a number's bits stirred together; 0 and −0 are one corner. */
  #mixed(value: number): number {
    this.#bits[0] = value + 0;
    const stirred = Math.imul(this.#words[0]! ^ Math.imul(this.#words[1]!, 0xc2b2ae35), 0x27d4eb2f);
    return stirred ^ (stirred >>> 15);
  }
}
