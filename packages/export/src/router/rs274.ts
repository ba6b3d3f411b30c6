// Toolpaths as RS-274: only the words that hobby controls share, each move with its own word, arcs as arcs.
// @see Kramer, Proctor and Messina, The NIST RS274NGC Interpreter, Version 3, NISTIR 6556 (2000)
import type { Cutter, Design } from "@lamplane/parameters/table";
import { fromMillimetres } from "@lamplane/parameters/units";
import type { Program } from "./program.ts";
import type { Move, Point3D, Toolpath } from "./toolpath.ts";

type RouterRule = Design["router"];

/** How far a control may round a corner off, mm. */
const BLEND = 0.01;
/** An arc that ends nearer to its beginning is written as a line, mm: after rounding it could pass for a full circle. */
const SHORTEST_ARC = 0.01;

/** Comments at a program's head, and what is said when a cutter is fitted. */
export interface ProgramWords {
  readonly head: readonly string[];
  readonly fit: (cutter: Cutter) => string;
  /** At the end, when the spindle is off. */
  readonly done: string;
}

export interface ProgramText {
  readonly text: string;
  /** For each toolpath, the number of each move's line in the text, the first line being 1. */
  readonly lines: readonly (readonly number[])[];
}

/** One program for all cutters of a set-up. */
export function programText(
  { toolpaths, setUp }: Program,
  router: RouterRule,
  cutters: readonly Cutter[],
  words: ProgramWords,
): ProgramText {
  const write = new BlockWriter(router, router.zero === "corner-spoilboard" ? setUp.height : 0);
  write.comments(words.head);
  write.modes();
  const lines = toolpaths.map((toolpath, i) => {
    write.change(toolpath, cutters.indexOf(toolpath.cutter) + 1, words.fit(toolpath.cutter), i === 0);
    return write.toolpath(toolpath);
  });
  return { text: write.end(words.done), lines };
}

class BlockWriter {
  readonly #lines: string[] = [];
  readonly #router: RouterRule;
  readonly #lift: number;
  #feed = Number.NaN;

  /** @param lift height of the stock's top over the program's zero, mm */
  constructor(router: RouterRule, lift: number) {
    this.#router = router;
    this.#lift = lift;
  }

  comments(lines: readonly string[]): void {
    for (const line of lines) for (const part of wrapComment(commentText(line))) this.#lines.push(`(${part})`);
  }

  modes(): void {
    const { units, pathControl } = this.#router;
    this.#lines.push(`G17 ${units === "in" ? "G20" : "G21"} G40 G54 G80 G90 G94`);
    this.#lines.push(pathControl === "g64" ? `G64 P${this.#length(BLEND)}` : "G61");
  }

  /**
   * The last cutter stands at its park height. Where the new one stands no program knows: it goes to its park height
   * straight and at its plunge feed, and only there turns and goes sideways.
   */
  change({ cutter, start }: Toolpath, number: number, words: string, isFirst: boolean): void {
    if (!isFirst) this.#lines.push("M5");
    this.comments([words]);
    this.#lines.push(...this.#changeBlocks(number, isFirst));
    if (!isFirst) this.modes(); // a hand at the control may have left others
    this.#feed = Number.NaN;
    this.#lines.push(`G1 Z${this.#height(start.z)}${this.#feedWord(cutter.plunge)}`, `S${cutter.speed} M3`);
    if (this.#router.spindleDelay > 0) this.#lines.push(`G4 P${this.#router.spindleDelay}`);
  }

  /** No cutter runs on another's z: its length is taken from the control's table, or the program stops for a new z. */
  #changeBlocks(number: number, isFirst: boolean): string[] {
    const { toolChange } = this.#router;
    if (toolChange === "m6-length") return [`T${number} M6`, `G43 H${number}`];
    if (toolChange === "m6") return [`T${number} M6`, "M0"];
    return isFirst ? [] : ["M0"];
  }

  /** @returns the number of each move's line */
  toolpath({ start, moves }: Toolpath): number[] {
    let at = start;
    return moves.map((move) => {
      const block = this.#block(at, move);
      at = move.to;
      return this.#lines.push(block);
    });
  }

  end(words: string): string {
    this.#lines.push("M5");
    this.comments([words]);
    return [...this.#lines, "M30", ""].join("\n");
  }

  #block(from: Point3D, move: Move): string {
    const { to } = move;
    const axes = `${this.#axis("X", from.x, to.x)}${this.#axis("Y", from.y, to.y)}${this.#axis("Z", from.z, to.z)}`;
    if (move.kind === "rapid") return `G0${axes}`;
    const feed = this.#feedWord(move.feed);
    if (move.kind === "line" || Math.hypot(to.x - from.x, to.y - from.y) < SHORTEST_ARC) return `G1${axes}${feed}`;
    const [i, j] = [this.#offset(move.centre.x, from.x), this.#offset(move.centre.y, from.y)];
    const ends = ` X${this.#length(to.x)} Y${this.#length(to.y)}${this.#axis("Z", from.z, to.z)}`;
    return `G${move.sweep > 0 ? 3 : 2}${ends} I${i} J${j}${feed}`;
  }

  #axis(name: "X" | "Y" | "Z", from: number, to: number): string {
    const text = name === "Z" ? this.#height(to) : this.#length(to);
    return text === (name === "Z" ? this.#height(from) : this.#length(from)) ? "" : ` ${name}${text}`;
  }

  #feedWord(feed: number): string {
    if (feed === this.#feed) return "";
    this.#feed = feed;
    return ` F${trimZeros(fromMillimetres(feed, this.#router.units).toFixed(this.#router.units === "in" ? 2 : 0))}`;
  }

  #height(z: number): string {
    return this.#length(z + this.#lift);
  }

  /** From where an arc begins, as it is written, to its centre. */
  #offset(centre: number, from: number): string {
    const unit = this.#router.units;
    return this.#text(fromMillimetres(centre, unit) - Number(this.#length(from)));
  }

  #length(mm: number): string {
    return this.#text(fromMillimetres(mm, this.#router.units));
  }

  #text(value: number): string {
    return trimZeros((value + 0).toFixed(this.#router.units === "in" ? 5 : 4)).replace(/^-0$/, "0");
  }
}

/** 1.5000 as 1.5, and 2.0000 as 2. */
const trimZeros = (text: string): string => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);

/** A comment of a program is plain ASCII without brackets. */
const commentText = (text: string): string =>
  text
    .replaceAll("×", "x")
    .replaceAll("°", " degrees")
    .replace(/[()]/g, "-")
    .replace(/[^ -~]/g, "?");

/** Letters in a line of a comment: some controls take no more than 80 in all. */
const LONGEST_COMMENT = 70;

/** A comment in lines that break between words. */
function wrapComment(text: string): string[] {
  const lines = [""];
  for (const word of text.split(" ")) {
    const line = lines.at(-1)!;
    if (line !== "" && line.length + 1 + word.length > LONGEST_COMMENT) lines.push(word);
    else lines[lines.length - 1] = line === "" ? word : `${line} ${word}`;
  }
  return lines;
}
