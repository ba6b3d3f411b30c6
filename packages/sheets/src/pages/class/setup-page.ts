// A page for one machine set-up: each setting large, and under it the planes to tick as they are cut.
import type { MachineSetup } from "@lamplane/bench/class";
import { CLASS_SHEET, SETUP_COLUMNS, SETUP_WORDS } from "@lamplane/bench/words";
import type { Design } from "@lamplane/parameters/table";
import { formatDrill, formatValue } from "@lamplane/parameters/units";
import { numberSpans } from "@lamplane/parameters/words";
import type { ClassSheet } from "../../class/class-sheet.ts";
import { type PageBlock, sideBySide, stackBlocks, withGaps } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { checklistBlock, headingBlock, paragraphBlock } from "../blocks/text.ts";

/** Height of a setting's number, mm: read from across the machine. */
const SETTING_SIZE = 9;
const APART = 6;

const settingText = ({ key, unit }: MachineSetup, value: number, design: Design): string =>
  key === "pinHole" ? formatDrill(value, design) : formatValue(value, unit, design);

export function setupGroup(
  setup: MachineSetup,
  number: number,
  { designs, numbers }: Pick<ClassSheet, "designs" | "numbers">,
  width: number,
): BlockGroup {
  const { title, task } = SETUP_WORDS[setup.key];
  return {
    startsColumn: true,
    blocks: [
      headingBlock(CLASS_SHEET.setUp({ number, title }), width, 6),
      paragraphBlock(task, width, {}, 3),
      ...setup.settings.map(({ value, planes }) =>
        withGaps(
          stackBlocks(
            headingBlock(settingText(setup, value, designs[planes[0]!]!), width, SETTING_SIZE),
            planesBlock(setup, planes, { designs, numbers }, width),
          ),
          3,
          4,
        ),
      ),
    ],
  };
}

/** The planes of one setting in two columns, each with a box to tick and its own place where it has one. */
function planesBlock(
  { places }: MachineSetup,
  planes: readonly number[],
  { designs, numbers }: Pick<ClassSheet, "designs" | "numbers">,
  width: number,
): PageBlock {
  const half = (width - APART) / 2;
  const lines = planes.map((plane) => {
    const at = places?.values.get(plane);
    const own =
      at === undefined || !places ? "" : `, ${SETUP_COLUMNS[places.column]} ${formatValue(at, "mm", designs[plane]!)}`;
    return `${numbers[plane]}  ${designs[plane]!.name}${own}`;
  });
  const middle = Math.ceil(lines.length / 2);
  const columns = [lines.slice(0, middle), lines.slice(middle)].filter((column) => column.length > 0);
  return sideBySide(APART, ...columns.map((column) => checklistBlock(column, half)));
}

/** The set-up as a row of the day's list. */
export function setupRow(
  setup: MachineSetup,
  number: number,
  { designs, numbers }: Pick<ClassSheet, "designs" | "numbers">,
) {
  const settings = setup.settings.map(
    ({ value, planes }) =>
      `${settingText(setup, value, designs[planes[0]!]!)}: ${numberSpans(planes.map((plane) => numbers[plane]!))}`,
  );
  return [{ text: `${number}` }, { text: SETUP_WORDS[setup.key].title, bold: true }, { text: settings.join("; ") }];
}
