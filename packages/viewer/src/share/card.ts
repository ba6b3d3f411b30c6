// The card of a plane: its opened body, its name, its key figures, and a code to scan. Drawn at twice its size in CSS pixels.
import { SHARE } from "../words/share.ts";
import type { Code } from "./code.ts";

export interface CardContent {
  readonly name: string;
  readonly figures: readonly (readonly [label: string, value: string])[];
  readonly body: HTMLCanvasElement | undefined;
  readonly code: Code | undefined;
}

const [WIDTH, HEIGHT, EDGE] = [1600, 1000, 56];
const COLUMN = 1030;
const CODE_SIDE = 514;

interface Ink {
  readonly paper: string;
  readonly ink: string;
  readonly thin: string;
}

export function drawCard(canvas: HTMLCanvasElement, { name, figures, body, code }: CardContent): void {
  canvas.width = WIDTH;
  canvas.height = HEIGHT;
  const pen = canvas.getContext("2d")!;
  const style = getComputedStyle(document.documentElement);
  const colour = (token: string) => style.getPropertyValue(token).trim();
  const ink: Ink = { paper: colour("--paper"), ink: colour("--ink"), thin: colour("--thin") };
  pen.fillStyle = ink.paper;
  pen.fillRect(0, 0, WIDTH, HEIGHT);
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 3;
  pen.strokeRect(20, 20, WIDTH - 40, HEIGHT - 40);
  drawName(pen, name, ink);
  if (body) pen.drawImage(body, EDGE - 16, 160, 920, (920 * body.height) / body.width);
  else drawText(pen, SHARE.noBody, { x: EDGE, y: 540 }, { font: "400 30px system-ui, sans-serif", colour: ink.thin });
  drawFigures(pen, figures, ink);
  if (code) drawCode(pen, code, ink);
}

function drawName(pen: CanvasRenderingContext2D, name: string, { ink, thin }: Ink) {
  let size = 68;
  const font = () => `650 ${size}px system-ui, sans-serif`;
  for (pen.font = font(); size > 28 && pen.measureText(name).width > WIDTH - 2 * EDGE - 220; pen.font = font())
    size -= 4;
  drawText(pen, name, { x: EDGE, y: 116, widest: WIDTH - 2 * EDGE - 220 }, { font: font(), colour: ink });
  pen.textAlign = "right";
  drawText(pen, "lamplane", { x: WIDTH - EDGE, y: 116 }, { font: "400 34px system-ui, sans-serif", colour: thin });
  pen.textAlign = "left";
}

/** Labels in one column, values in the next; closer where a code stands below them. */
function drawFigures(pen: CanvasRenderingContext2D, figures: CardContent["figures"], { ink, thin }: Ink) {
  figures.forEach(([label, value], i) => {
    const y = 206 + 37 * i;
    drawText(pen, label, { x: COLUMN, y }, { font: "400 29px system-ui, sans-serif", colour: thin });
    const place = { x: COLUMN + 140, y, widest: WIDTH - EDGE - COLUMN - 140 };
    drawText(pen, value, place, { font: "600 29px system-ui, sans-serif", colour: ink });
  });
}

/** Dark on white whatever the theme; whole pixels to a module, so that no edge is blurred. */
function drawCode(pen: CanvasRenderingContext2D, code: Code, { thin }: Ink) {
  const pitch = Math.floor(CODE_SIDE / code.length);
  const side = pitch * code.length;
  const [left, top] = [COLUMN, HEIGHT - EDGE - side + 14];
  pen.fillStyle = "#ffffff";
  pen.fillRect(left, top, side, side);
  pen.fillStyle = "#000000";
  code.forEach((row, y) => {
    row.forEach((isDark, x) => {
      if (isDark) pen.fillRect(left + pitch * x, top + pitch * y, pitch, pitch);
    });
  });
  drawText(pen, SHARE.scan, { x: COLUMN, y: top - 12 }, { font: "400 25px system-ui, sans-serif", colour: thin });
}

interface TextPlace {
  readonly x: number;
  readonly y: number;
  readonly widest?: number;
}

interface TextStyle {
  readonly font: string;
  readonly colour: string;
}

function drawText(pen: CanvasRenderingContext2D, text: string, { x, y, widest }: TextPlace, style: TextStyle) {
  pen.font = style.font;
  pen.fillStyle = style.colour;
  pen.fillText(text, x, y, widest);
}
