// What the page says of sharing a design: by address, by a code to scan, by a card to save.
import { sentence } from "@lamplane/parameters/words";

export const SHARE = {
  open: "share…",
  openHelp: "Address, code to scan and card of this plane",
  title: "Share this plane",
  address: "Address that holds the whole design",
  copy: "Copy the address",
  copied: "Copied. It opens as this plane, measured values and comments included.",
  copiedPart: "Copied from # on. Paste it behind the address of any lamplane page.",
  notCopied: "The browser does not let the page copy. Select the address and copy it by hand.",
  tooLong: "This design file is too long for an address. Save the file and send that.",
  page: "Address of a lamplane page that others can open",
  pageHelp: "This page is on this machine only. Enter where your page stands on the web; it is remembered.",
  pageNotRead: "This is no address of a page; write one such as https://example.org/lamplane/",
  making: "Drawing the card…",
  save: "Save the card",
  close: "Close",
  scan: "Scan to open this plane",
  noBody: "No body to picture",
  noCode: {
    page: "No code yet: enter the address of a page that a phone can open.",
    length: "No code: this design is too long for one. Send the address or the file.",
  },
  shortCode: sentence(
    ({ whole, most }: { whole: number; most: number }) =>
      `The whole address has ${whole} characters; a code that a phone reads well holds ${most}. The code on the card opens the same plane without the file's comments.`,
    { whole: 5210, most: 2331 },
  ),
  wholeCode: "The code on the card holds the whole design file, comments included.",
  cardPicture: sentence(
    (name: string) => `Card of ${name}: its body opened along the glue lines, and its key figures`,
    "my-plane",
  ),
} as const;

/** Figures on the card. */
export const CARD_FIGURES = {
  iron: "Iron",
  bed: "Bed",
  length: "Length",
  width: "Width",
  height: "Height",
  mouth: "Mouth",
  ramp: "Ramp",
  wedge: "Wedge",
} as const;
