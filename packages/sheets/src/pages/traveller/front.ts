// What comes before the first step: the plane with its parts named, its figures, how to use the sheets, wood, tools, cautions, findings.
import type { Traveller } from "../../traveller/index.ts";
import { sideBySide, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { tableBlock } from "../blocks/table.ts";
import { checklistBlock, headingBlock, paragraphBlock } from "../blocks/text.ts";
import { numbersBlock } from "./step-tables.ts";

const HOW_TO_USE = [
  "Work the steps in order. Tick each box; read the checks before you go on.",
  "Measure what each step asks for, write it on its line, and type it in: lamplane measured FILE key=value. Build the pack again and the steps still to come carry the new numbers, each with what it was.",
  "layout.pdf, printed at 100 %, has the same lines at full size to glue on the wood.",
];
const ROUNDING = {
  in: "Lengths stand on the nearest division of your rule, + where they are plainly over it and − where under; behind it in brackets, for the caliper, the length itself. No less and no more say which way a length may err.",
  mm: "Lengths are in millimetres to the hundredth; work each to what your tool holds. No less and no more say which way a length may err.",
};

export function frontGroups(traveller: Traveller, width: number): BlockGroup[] {
  const { design, section, keyFigures, tools, stock, defer, cautions, findings, name } = traveller;
  const half = (width - 6) / 2;
  const middle = Math.ceil(keyFigures.length / 2);
  return [
    {
      blocks: [
        paragraphBlock(`Traveller: ${name}`, width, { size: 7, bold: true }, 1),
        paragraphBlock("The whole build in order, with this plane's numbers, to take to the bench.", width),
        pictureBlock(section, width),
        stackBlocks(
          headingBlock("Key figures", width),
          sideBySide(6, numbersBlock(keyFigures.slice(0, middle), half), numbersBlock(keyFigures.slice(middle), half)),
        ),
        stackBlocks(
          headingBlock("How to use these sheets", width),
          ...[...HOW_TO_USE, ROUNDING[design.units]].map((text) => paragraphBlock(text, width)),
        ),
      ],
    },
    findingsGroup(findings, width),
    {
      blocks: [
        stackBlocks(
          headingBlock(
            `Stock list, length × width × thickness, length along the grain, in ${design.units === "mm" ? "mm" : "inches"}`,
            width,
          ),
          stockTable(traveller, width),
        ),
      ],
    },
    { blocks: [stackBlocks(headingBlock("Tools", width), checklistBlock(tools, width))] },
    {
      blocks: [
        headingBlock("Cautions, all of them; each stands again at its step", width),
        paragraphBlock(defer, width, { bold: true }),
        ...cautions.map(({ text }) => paragraphBlock(text, width)),
      ],
    },
  ];

  function stockTable({ stock: { head, rows } }: Traveller, all: number) {
    const shares = [0.11, 0.05, 0.2, 0.2, 0.12, 0.14, 0.18];
    const cells = [
      head.map((text) => ({ text, bold: true, size: SMALL_TEXT_SIZE })),
      ...rows.map((row) => row.map((text) => ({ text, size: SMALL_TEXT_SIZE }))),
    ];
    return stock.rows.length > 0
      ? tableBlock(
          cells,
          shares.map((share) => share * all),
        )
      : paragraphBlock("No pieces.", all);
  }
}

const SEVERITY = {
  stop: "Stop: it will not work like this.",
  warning: "Warning: it may not work well; decide before you cut.",
  note: "Note: worth knowing.",
} as const;

function findingsGroup(findings: Traveller["findings"], width: number): BlockGroup {
  const none = "Every check is passed: nothing was found that would stop this plane or make it work badly.";
  return {
    blocks: [
      stackBlocks(
        headingBlock("What the checks found", width),
        ...(findings.length === 0
          ? [paragraphBlock(none, width)]
          : findings.map(({ severity, message }) => paragraphBlock(`${SEVERITY[severity]} ${message}`, width))),
      ),
    ],
  };
}
