// The colour of the plane's wood: light or dark paper, and every part a shade of its species.

/**
 * Clear, oiled heartwood in daylight, by the first word of a species' name.
 * @see from memory: colours of a joiner's sample boards
 */
const COLOURS: Readonly<Record<string, string>> = {
  ash: "#d9c39a",
  beech: "#d2a67a",
  birch: "#dcc196",
  cherry: "#b87d55",
  hornbeam: "#d8c8a4",
  maple: "#dfc79c",
  mahogany: "#9c5b3b",
  oak: "#c2a06c",
  pear: "#c99a78",
  walnut: "#86614a",
};
const OTHER = "#cfa877";

/** Relative luminance that wood keeps, so that it stands off the paper and lines stand off it. @see WCAG 2.2 */
const LIGHT = { least: 0.2, most: 0.5 };
const DARK = { least: 0.075, most: 0.15 };
/** Shares of the wood's own luminance: the far cheek stands in the shade, the wedge is rubbed with oil. */
const SHADES = { "--wood": 1, "--wood-far": 0.74, "--cheek": 1.04, "--wedge": 0.84, "--pin": 0.72 } as const;

type Rgb = readonly [number, number, number];

export interface WoodTone {
  readonly name: string;
  readonly light: string;
  readonly dark: string;
}

/** Colours of the parts in light and in dark. */
export function woodTones(species: string): WoodTone[] {
  const colour = linearOf(COLOURS[species.toLowerCase().split(/[^a-z]/)[0]!] ?? OTHER);
  return Object.entries(SHADES).map(([name, share]) => ({
    name,
    light: hexOf(withLuminance(colour, within(luminance(colour), LIGHT) * share)),
    dark: hexOf(withLuminance(colour, within(DARK.least + 0.14 * luminance(colour), DARK) * share)),
  }));
}

/** Puts the colours where the style sheet and the body read them. */
export function paintWood(root: HTMLElement, species: string): void {
  if (root.dataset.wood === species) return;
  for (const { name, light, dark } of woodTones(species))
    root.style.setProperty(name, `var(--light, ${light}) var(--dark, ${dark})`);
  root.dataset.wood = species;
}

const within = (value: number, { least, most }: { least: number; most: number }): number =>
  Math.min(most, Math.max(least, value));

const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

const withLuminance = (colour: Rgb, wanted: number): Rgb =>
  colour.map((channel) => Math.min(1, (channel * wanted) / luminance(colour))) as unknown as Rgb;

/** sRGB to linear light and back. @see IEC 61966-2-1 */
const linearOf = (hex: string): Rgb =>
  [1, 3, 5].map((k) => {
    const share = Number.parseInt(hex.slice(k, k + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Rgb;

const hexOf = (colour: Rgb): string =>
  `#${colour
    .map((c) => Math.round(255 * (c <= 0.0031308 ? c * 12.92 : 1.055 * c ** (1 / 2.4) - 0.055)))
    .map((c) => c.toString(16).padStart(2, "0"))
    .join("")}`;
