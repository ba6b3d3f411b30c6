// A shade of grey as SVG and PDF both write it.

/** `#rrggbb` of a shade: 0 white, 1 black. */
export function grey(shade: number): string {
  const level = Math.round(255 * (1 - Math.min(1, Math.max(0, shade))));
  return `#${level.toString(16).padStart(2, "0").repeat(3)}`;
}
