// Numbers for vertices: the same coordinates always get the same number. Neighbours share vertices to the last bit, so bits are compared.
import type { Vec3 } from "./vectors.ts";

/** A table of vertices by open addressing, at most a quarter full. 0 and −0 are one; NaN is never equal to itself. */
export class VertexTable {
  #slots = new Int32Array(1024).fill(-1);
  #positions = new Float64Array(3 * 256);
  #count = 0;
  readonly #bits = new Float64Array(1);
  readonly #words = new Uint32Array(this.#bits.buffer);

  /** Number of the vertex at x, y, z, which is added where it is new. */
  numberOf(x: number, y: number, z: number): number {
    const mask = this.#slots.length - 1;
    for (let slot = this.#hash(x, y, z) & mask; ; slot = (slot + 1) & mask) {
      const known = this.#slots[slot]!;
      if (known < 0) return this.#add(slot, x, y, z);
      const p = this.#positions;
      if (p[3 * known] === x && p[3 * known + 1] === y && p[3 * known + 2] === z) return known;
    }
  }

  at(number: number): Vec3 {
    const p = this.#positions;
    return [p[3 * number]!, p[3 * number + 1]!, p[3 * number + 2]!];
  }

  /** Coordinates of all vertices in the order of their numbers. */
  positions(): Float64Array {
    return this.#positions.slice(0, 3 * this.#count);
  }

  #add(slot: number, x: number, y: number, z: number): number {
    const number = this.#count++;
    this.#slots[slot] = number;
    this.#positions[3 * number] = x;
    this.#positions[3 * number + 1] = y;
    this.#positions[3 * number + 2] = z;
    if (4 * this.#count >= this.#slots.length) this.#grow();
    return number;
  }

  #grow(): void {
    const positions = new Float64Array(2 * this.#positions.length);
    positions.set(this.#positions);
    this.#positions = positions;
    this.#slots = new Int32Array(2 * this.#slots.length).fill(-1);
    const mask = this.#slots.length - 1;
    for (let n = 0; n < this.#count; n++) {
      let slot = this.#hash(positions[3 * n]!, positions[3 * n + 1]!, positions[3 * n + 2]!) & mask;
      while (this.#slots[slot]! >= 0) slot = (slot + 1) & mask;
      this.#slots[slot] = n;
    }
  }

  #hash(x: number, y: number, z: number): number {
    return this.#stir(x) ^ Math.imul(this.#stir(y), 0x9e3779b1) ^ Math.imul(this.#stir(z), 0x85ebca6b);
  }

  #stir(value: number): number {
    this.#bits[0] = value + 0;
    const stirred = Math.imul(this.#words[0]! ^ Math.imul(this.#words[1]!, 0xc2b2ae35), 0x27d4eb2f);
    return stirred ^ (stirred >>> 15);
  }
}
