// Headings, heads and feet of the papers: card, traveller, appendix and layout.
import { sentence } from "@lamplane/parameters/words";

/** At the foot of every page of card, traveller and appendix. */
export const DEFER_FOOT =
  "Follow each machine's manual, local rules and trained practice. Where they differ from this sheet, follow them.";

export const PAPER = {
  card: "card",
  traveller: "traveller",
  appendix: "appendix",
  title: sentence(({ name, paper }: { name: string; paper: string }) => `${name}: ${paper}`, {
    name: "first-smoother",
    paper: "traveller",
  }),
  cardSubject: "Key figures, set-ups and cautions, to hang up at the bench",
  travellerSubject: "The build in order, to take to the bench",
  appendixSubject: "Findings, plots, strength and sources",
  page: sentence(
    ({ page, pages, version }: { page: number; pages: number; version: string }) =>
      `page ${page} of ${pages} · lamplane ${version}`,
    { page: 3, pages: 16, version: "0.2.0" },
  ),
} as const;

export const CARD = {
  keyFigures: "Key figures",
  setUps: "Set-ups, in the order of the work",
  cautions: "Cautions",
} as const;

export const FRONT = {
  task: "The whole build in order, with this plane's numbers.",
  howToUse: "How to use these sheets",
  howTo: [
    "Work the steps in order. Tick each box. Read the checks before you go on.",
    "Write what you measure on its line and enter it: lamplane measured FILE key=value. Build the pack again: the steps still to come carry the new numbers, each with what it was.",
    "layout.pdf has the same lines at full size. Print it at 100 % and glue it on the wood.",
    "card.pdf has all set-ups and cautions on two pages, to hang up. appendix.pdf has plots, strength and sources.",
  ],
  rounding: {
    in: "Lengths are rounded to your rule: 3 1/2+ is a touch more, 3 1/2− a touch less. The exact length, for the caliper, is in brackets. “No less” and “no more” say which way a length may err.",
    mm: "Lengths are in millimetres to the hundredth. Work each to what your tool holds. “No less” and “no more” say which way a length may err.",
  },
  stock: sentence(
    ({ unit }: { unit: string }) => `Stock list: length × width × thickness in ${unit}, length along the grain`,
    { unit: "mm" },
  ),
  noPieces: "No pieces.",
  tools: "Tools",
  jigs: "Jigs",
} as const;

export const FINDINGS = {
  heading: "What the checks found",
  none: "Every check passes.",
  stop: "Stop: it will not work like this.",
  warning: "Warning: it may not work well. Decide before you cut.",
  note: "Note: worth knowing.",
  inAppendix: sentence(({ count }: { count: number }) => `${count} more in appendix.pdf.`, { count: 3 }),
} as const;

export const STEP_PAGE = {
  done: "done",
  why: sentence(({ why }: { why: string }) => `Why: ${why}`, {
    why: "The iron chatters on a hump and is held by a slight hollow.",
  }),
  do: "Do",
  check: "Check before going on",
  lastCheck: "Check",
  continued: sentence(({ number, title }: { number: number; title: string }) => `${number}  ${title}, continued`, {
    number: 4,
    title: "Cut ramp and bed",
  }),
  measure: "Measure and write down",
  key: sentence(({ key }: { key: string }) => `${key} =`, { key: "coreWidth" }),
  expected: sentence(({ expected }: { expected: string }) => `expected ${expected}`, { expected: "49.6 mm" }),
  was: sentence(({ was }: { was: string }) => `was ${was}`, { was: "48 mm" }),
  read: "read",
  caution: "CAUTION",
  notes: "Notes",
  gaps: "Gaps under the straightedge, up from the tip, across from your left as you stand behind the heel: at each station the leaf that goes in / the one that does not",
  station: sentence(({ station }: { station: string }) => `at ${station}`, { station: "18" }),
} as const;

export const APPENDIX = {
  plots: "Plots",
  strength: "Hold and strength, indicative",
  sources: "Where the cautions come from",
  source: sentence(({ subject, source }: { subject: string; source: string }) => `“${subject} …”: ${source}.`, {
    subject: "A disc or belt can snatch a small block stood on end",
    source: "29 CFR 1910.213(p), sanding machines",
  }),
  otherSources: "The other cautions: trade practice, from memory.",
} as const;
