// How wide words run, so that a picture can leave room for them without a font at hand.

/** Width of a line of words in the unit of its size, the height of the em. */
export type TextMeasure = (text: string, size: number, bold?: boolean) => number;

const CHARACTERS =
  " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~°×½¼¾−–Ø⌀βρωτ·…≥≤±²′″“”’éèöüäßñç□";
/** Advance widths in thousandths of the em. @see DejaVu Sans Condensed 2.37, table hmtx */
const PLAIN = `
  286 360 414 754 572 855 702 247 351 351 450 754 286 325 286 303 572 572 572 572 572 572 572 572 572 572 303 303
  754 754 754 478 900 615 617 628 693 568 518 697 677 265 265 590 501 776 673 708 542 708 625 571 549 659 615 890
  616 549 616 351 303 351 754 450 450 551 571 495 571 554 316 571 570 250 250 521 250 876 570 550 571 571 370 469
  353 570 532 736 532 532 472 572 303 572 754 450 754 872 872 872 754 450 708 542 574 571 753 542 286 900 754 754
  754 360 204 336 466 466 286 554 554 550 570 551 567 570 495 850`;
const BOLD = `
  313 410 469 754 626 901 785 275 411 411 470 754 342 374 342 329 626 626 626 626 626 626 626 626 626 626 360 360
  754 754 754 522 900 696 686 660 747 615 615 738 753 334 334 697 573 896 753 765 659 765 693 648 614 730 696 993
  694 651 652 411 329 411 754 450 450 607 644 533 644 610 391 644 641 308 308 598 308 938 641 618 644 644 444 536
  430 641 586 831 580 586 523 641 329 641 754 450 754 932 932 932 754 450 765 542 644 644 782 574 342 900 754 754
  754 394 237 402 591 591 342 610 610 618 641 607 647 641 533 850`;

const parseWidths = (widths: string): ReadonlyMap<string, number> => {
  const each = widths.trim().split(/\s+/).map(Number);
  return new Map(Array.from(CHARACTERS, (c, i) => [c, each[i]!]));
};
const WIDTHS = { plain: parseWidths(PLAIN), bold: parseWidths(BOLD) };
/** A character that the table lacks counts as a whole em: too wide rather than too narrow. */
const UNKNOWN = 1000;

/** In the sheets' typeface. Pairs that the typeface draws closer count in full. */
export const textWidth: TextMeasure = (text, size, bold = false) =>
  (sumOfSigns(text, (c) => WIDTHS[bold ? "bold" : "plain"].get(c) ?? UNKNOWN) / 1000) * size;

/** Widths in ems, each the widest of its class in common sans-serif faces, from memory; `other` for every other sign. */
const WIDEST: readonly (readonly [RegExp, number])[] = [
  [/[il.,:;'|!jI]/, 0.36],
  [/[ frt()[\]/-]/, 0.46],
  [/[mwMW%@]/, 1],
  [/[A-Z]/, 0.78],
];
const OTHER = 0.66;
const BOLDER = 1.1; // bold faces are a tenth wider

/** In whatever plain face shows the picture: on the wide side, so that what is apart here is apart in any. */
export const estimateTextWidth: TextMeasure = (text, size, bold = false) =>
  sumOfSigns(text, (c) => WIDEST.find(([kind]) => kind.test(c))?.[1] ?? OTHER) * size * (bold ? BOLDER : 1);

const sumOfSigns = (text: string, width: (sign: string) => number): number =>
  Array.from(text).reduce((sum, sign) => sum + width(sign), 0);
