// What is used of pdfkit's document and fontkit's font, declared here: who installs this package needs no declarations of theirs.

/** A document that is drawn on in points, from the page's upper left corner. */
export interface PdfPages {
  addPage(options: { size: [width: number, height: number]; margin: number }): this;
  save(): this;
  restore(): this;
  lineWidth(points: number): this;
  lineJoin(join: "round"): this;
  lineCap(cap: "butt"): this;
  strokeColor(colour: string): this;
  fillColor(colour: string): this;
  /** Lengths in turn, drawn and left out. */
  dash(lengths: number[], options: object): this;
  moveTo(x: number, y: number): this;
  lineTo(x: number, y: number): this;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): this;
  rect(x: number, y: number, width: number, height: number): this;
  closePath(): this;
  clip(): this;
  stroke(): this;
  fill(rule: "even-odd"): this;
  scale(factor: number, options: { origin: [x: number, y: number] }): this;
  rotate(degrees: number, options: { origin: [x: number, y: number] }): this;
  font(name: "plain" | "bold"): this;
  fontSize(points: number): this;
  text(text: string, x: number, y: number, options: TextOptions): this;
  on(event: "data", listener: (chunk: Uint8Array) => void): this;
  on(event: "end", listener: () => void): this;
  on(event: "error", listener: (error: Error) => void): this;
  end(): void;
}

interface TextOptions {
  readonly lineBreak: false;
  readonly baseline: "alphabetic";
}

/** A typeface's font, in its own units. */
export interface Font {
  readonly unitsPerEm: number;
  hasGlyphForCodePoint(codePoint: number): boolean;
  glyphForCodePoint(codePoint: number): Glyph;
  /** @param codePoints the text that the glyph stands for */
  getGlyph(id: number, codePoints?: readonly number[]): Glyph;
  layout(text: string, features?: object, script?: string): GlyphRun;
}

export interface Glyph {
  readonly id: number;
  readonly codePoints: readonly number[];
  readonly advanceWidth: number;
}

/** Glyphs in their order, each with what it is moved by and moves on by. */
export interface GlyphRun {
  readonly glyphs: readonly Glyph[];
  readonly positions: GlyphPosition[];
  readonly advanceWidth: number;
}
export interface GlyphPosition {
  xAdvance: number;
  yAdvance: number;
  xOffset: number;
  yOffset: number;
}
