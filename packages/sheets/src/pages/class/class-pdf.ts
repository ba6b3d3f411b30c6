// The class's sheet as a PDF: the planes, its boards, a page a set-up in the order of the work, jigs, then a page a pupil.
import { CLASS_SHEET } from "@lamplane/bench/words";
import { formatLength } from "@lamplane/parameters/units";
import { numberSpans } from "@lamplane/parameters/words";
import { type ClassSheet, coreOf } from "../../class/class-sheet.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { tableRows } from "../blocks/table.ts";
import { headingBlock, paragraphBlock } from "../blocks/text.ts";
import { boardGroups } from "../boards/boards-pdf.ts";
import { notCutBlocks, type RouterSheets, setUpPageBlocks } from "../router-pdf.ts";
import { setUpsPage } from "../traveller/card-pdf.ts";
import { type Columns, columnLayout } from "../traveller/columns.ts";
import { columnsPdf, type TravellerOptions } from "../traveller/page-frame.ts";
import { setupGroup, setupRow } from "./setup-page.ts";

/** @param sheets of the shop, with all parts and jigs on them; absent where it has none */
export function classPdf(sheet: ClassSheet, options: TravellerOptions, sheets?: RouterSheets): Promise<Uint8Array> {
  const columns = columnLayout(options.paper);
  const { width } = columns;
  const about = { name: sheet.name, paper: CLASS_SHEET.paper, subject: CLASS_SHEET.subject };
  const groups = [
    planesGroup(sheet, width),
    ...(sheet.boards ? boardGroups(sheet.boards, width, CLASS_SHEET.fromBoards) : []),
    ...sheet.setups.map((setup, i) => setupGroup(setup, i + 1, sheet, width)),
    ...(sheets ? sheetGroups(sheets, columns) : []),
    jigsGroup(sheet, width),
    ...sheet.pupils.map((_, i) => pupilGroup(sheet, i, columns)),
  ];
  return columnsPdf(about, groups, columns, options);
}

/** Every plane with its number, then every set-up of the day on one page. */
function planesGroup(sheet: ClassSheet, width: number): BlockGroup {
  const { name, designs, numbers, setups } = sheet;
  const rows = designs.map((design, i) => {
    const { core, sidePlay } = coreOf(design);
    const length = (mm: number) => formatLength(mm, design);
    const { iron } = design;
    return [
      `${numbers[i]}`,
      design.name,
      `${length(iron.width)} × ${length(iron.thickness)}`,
      length(core),
      length(sidePlay),
    ];
  });
  const shares = [0.08, 0.3, 0.3, 0.16, 0.16];
  const planes = tableRows(
    [CLASS_SHEET.head.map((text) => ({ text, bold: true })), ...rows.map((cells) => cells.map((text) => ({ text })))],
    shares.map((share) => share * width),
  );
  return {
    blocks: [
      headingBlock(name, width, 6),
      paragraphBlock(CLASS_SHEET.order, width),
      headingBlock(CLASS_SHEET.planes, width),
      ...planes,
      headingBlock(CLASS_SHEET.setUps, width),
      ...tableRows(
        setups.map((setup, i) => setupRow(setup, i + 1, sheet)),
        [0.08 * width, 0.34 * width, 0.58 * width],
      ),
    ],
  };
}

/** A page for each of the shop's sheets, then what lies on none. */
function sheetGroups(sheets: RouterSheets, { width, height }: Columns): BlockGroup[] {
  const last = notCutBlocks(sheets, width);
  return [...sheets.pages.map((page) => setUpPageBlocks(page, width, height)), ...(last.length > 0 ? [last] : [])].map(
    (blocks) => ({ blocks, startsColumn: true }),
  );
}

function jigsGroup({ jigs, designs, numbers }: ClassSheet, width: number): BlockGroup {
  const rows = jigs.map(({ name, title, planes }) => [
    title,
    numberSpans(planes.map((plane) => numbers[plane]!)),
    `${designs[planes[0]!]!.name}/jigs/${name}`,
  ]);
  return {
    startsColumn: true,
    blocks: [
      headingBlock(CLASS_SHEET.jigs, width, 6),
      paragraphBlock(CLASS_SHEET.jigsTask, width),
      ...tableRows(
        [
          CLASS_SHEET.jigsHead.map((text) => ({ text, bold: true })),
          ...rows.map((cells) => cells.map((text) => ({ text }))),
        ],
        [0.3 * width, 0.3 * width, 0.4 * width],
      ),
    ],
  };
}

/** The first page of the plane's card under the pupil's number and name. */
function pupilGroup({ pupils, numbers }: ClassSheet, i: number, columns: Columns): BlockGroup {
  const head = headingBlock(`${numbers[i]}  ${pupils[i]!.name}`, columns.width, 7);
  return { ...setUpsPage(pupils[i]!, columns, [head]), startsColumn: true };
}
