// Numbers of many runs at once: one operation is one loop over plain doubles, whatever formula asks for it.
import { atanDeg, sinDeg } from "../trig.ts";
import type { Arithmetic } from "./arithmetic.ts";

/** One number a run. */
export type Block = Float64Array;

export interface BlockArithmetic extends Arithmetic<Block> {
  /** Gives back what was worked out so far: those blocks are written over by what comes next. Constants stay. */
  reuse(): void;
}

/**
 * Arithmetic on blocks of `length` runs, each worked out to the last bit as a plain number would be. The loops are written out:
 * one loop that called the operation would call a different one each time.
 */
export function blockArithmetic(length: number): BlockArithmetic {
  const blocks: Block[] = [];
  let used = 0;
  const nextBlock = (): Block => {
    if (used === blocks.length) blocks.push(new Float64Array(length));
    return blocks[used++]!;
  };
  const constants = new Map<number, Block>();
  const sines = new Map<Block, Block>();
  const cosines = new Map<Block, Block>();
  return {
    reuse() {
      used = 0;
      sines.clear();
      cosines.clear();
    },
    constant: (value) => remembered(constants, value, () => new Float64Array(length).fill(value)),
    add(a, b) {
      const sum = nextBlock();
      for (let i = 0; i < length; i++) sum[i] = a[i]! + b[i]!;
      return sum;
    },
    subtract(a, b) {
      const difference = nextBlock();
      for (let i = 0; i < length; i++) difference[i] = a[i]! - b[i]!;
      return difference;
    },
    multiply(a, b) {
      const product = nextBlock();
      for (let i = 0; i < length; i++) product[i] = a[i]! * b[i]!;
      return product;
    },
    divide(a, b) {
      const quotient = nextBlock();
      for (let i = 0; i < length; i++) quotient[i] = a[i]! / b[i]!;
      return quotient;
    },
    sqrt(a) {
      const root = nextBlock();
      for (let i = 0; i < length; i++) root[i] = Math.sqrt(a[i]!);
      return root;
    },
    sinDeg: (angle) =>
      remembered(sines, angle, () => {
        const sine = nextBlock();
        for (let i = 0; i < length; i++) sine[i] = sinDeg(angle[i]!);
        return sine;
      }),
    cosDeg: (angle) =>
      remembered(cosines, angle, () => {
        const cosine = nextBlock();
        for (let i = 0; i < length; i++) cosine[i] = sinDeg(angle[i]! + 90);
        return cosine;
      }),
    atanDeg(tangent) {
      const angle = nextBlock();
      for (let i = 0; i < length; i++) angle[i] = atanDeg(tangent[i]!);
      return angle;
    },
    choose(by, atOrAbove, otherwise) {
      const chosen = nextBlock();
      for (let i = 0; i < length; i++) chosen[i] = by[i]! >= 0 ? atOrAbove[i]! : otherwise[i]!;
      return chosen;
    },
  };
}

function remembered<K>(known: Map<K, Block>, key: K, make: () => Block): Block {
  const block = known.get(key) ?? make();
  known.set(key, block);
  return block;
}
