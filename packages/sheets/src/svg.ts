// A picture to SVG: millimetres throughout, arcs stay arcs, text stays text; the same picture gives the same bytes.

import { type Point, pointAlong, pointsEqual, type Segment } from "@lamplane/geometry";
import { grey } from "./grey.ts";
import { LINE_STYLES } from "./line-styles.ts";
import type { Picture, PictureMark } from "./picture/picture.ts";
import { PICTURE } from "./words/layout.ts";
import { escapeXml } from "./xml-text.ts";

/** Decimals of a length in mm: a tenth of a micrometre. */
const DECIMALS = 4;
/** About as wide as the font of the PDF, so that words keep the room left for them. */
const FONTS = "'DejaVu Sans Condensed', Arial, Helvetica, 'Liberation Sans', sans-serif";

/** SVG of a picture on white, its width and height in mm. @see W3C, SVG 1.1 (2011) */
export function pictureSvg(picture: Picture): string {
  const { name, title, description, width, height, marks } = picture;
  const id = name.replace(/[^A-Za-z0-9_-]/g, "-");
  const size = `width="${formatCoordinate(width)}mm" height="${formatCoordinate(height)}mm" viewBox="0 0 ${formatCoordinate(width)} ${formatCoordinate(height)}"`;
  const text = description ?? PICTURE.size({ width: formatCoordinate(width), height: formatCoordinate(height) });
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${escapeXml(title)}</title>`,
    `<desc id="${id}-desc">${escapeXml(text)}</desc>`,
    `<rect width="${formatCoordinate(width)}" height="${formatCoordinate(height)}" fill="#ffffff"/>`,
    `<g font-family="${FONTS}" fill="none" stroke-linejoin="round">`,
    ...marks.map((mark) => markElement(mark, height)),
    "</g>",
    "</svg>",
  ].join("\n")}\n`;
}

function markElement(mark: PictureMark, height: number): string {
  if (mark.kind === "text") return textElement(mark, height);
  if (mark.kind === "area") {
    const path = mark.boundaries.map((segments) => pathData(segments, true, height)).join("");
    return `<path d="${path}" fill="${grey(mark.shade)}" fill-rule="evenodd"/>`;
  }
  const { width, dashes, shade } = LINE_STYLES[mark.line];
  const broken = dashes.length > 0 ? ` stroke-dasharray="${dashes.map(formatCoordinate).join(" ")}"` : "";
  const path = pathData(mark.segments, mark.closed === true, height);
  return `<path class="${mark.line}" d="${path}" stroke="${grey(shade)}" stroke-width="${formatCoordinate(width)}"${broken}/>`;
}

function textElement(mark: Extract<PictureMark, { kind: "text" }>, height: number): string {
  const [x, y] = [formatCoordinate(mark.at.x), formatCoordinate(height - mark.at.y)];
  const turn = mark.turn ? ` transform="rotate(${formatCoordinate(-mark.turn)} ${x} ${y})"` : "";
  const anchor = mark.anchor && mark.anchor !== "start" ? ` text-anchor="${mark.anchor}"` : "";
  const weight = mark.bold ? ` font-weight="bold"` : "";
  const ink = grey(mark.shade ?? 1);
  return `<text x="${x}" y="${y}" font-size="${formatCoordinate(mark.size)}" fill="${ink}"${anchor}${weight}${turn}>${escapeXml(mark.text)}</text>`;
}

/** A chain that breaks off begins anew where its next segment does. */
function pathData(segments: readonly Segment[], closed: boolean, height: number): string {
  const at = (p: Point) => `${formatCoordinate(p.x)} ${formatCoordinate(height - p.y)}`;
  const steps = segments.map((segment, i) => {
    const before = segments[i - 1];
    const begin = before && pointsEqual(before.to, segment.from) ? "" : `M${at(segment.from)}`;
    if (segment.kind === "line") return `${begin}L${at(segment.to)}`;
    const parts = Math.max(1, Math.ceil(Math.abs(segment.sweep) / 180 - 1e-9)); // an A command cannot run a whole turn
    const turn = segment.sweep > 0 ? 0 : 1; // y runs down the page, so counter-clockwise is its negative turn
    const arcs = Array.from(
      { length: parts },
      (_, k) =>
        `A${formatCoordinate(segment.radius)} ${formatCoordinate(segment.radius)} 0 0 ${turn} ${at(pointAlong(segment, (k + 1) / parts))}`,
    );
    return begin + arcs.join("");
  });
  return steps.join("") + (closed ? "Z" : "");
}

function formatCoordinate(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a picture has the number ${value} in it`);
  return String(Number(value.toFixed(DECIMALS)) + 0); // + 0 makes −0 a 0
}
