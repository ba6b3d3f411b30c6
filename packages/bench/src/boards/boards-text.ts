// Boards in words: the way, each board's cuts in the order of sawing, and what is missing.
import { formatParameter, valueAt } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { formatAngle, formatBareLength, formatLength, formatPercent } from "@lamplane/parameters/units";
import { BOARDS } from "../words/boards.ts";
import { type Board, type BoardBox, volumeOf, wholeBoard } from "./board.ts";
import { type BoardCuts, type BoardPlan, boardPlan, cutsByBoard, ringsToSole } from "./board-plan.ts";
import type { ClassLayout } from "./class-boards.ts";

/** The body on the design's boards; undefined without any, or once core and cheeks are sawn. */
export function boardsText(design: Design): { text: string; comesOut: boolean } | undefined {
  const plan = boardPlan(design);
  if (!plan) return undefined;
  const { layout, boards, wood } = plan;
  const lines = layout
    ? [
        (design.core.layers === "whole" ? BOARDS.way : BOARDS.layeredWay)[layout.way],
        ...cutLines(design, boards, cutsByBoard(boards, [{ layout, parts: wood.parts, prefix: "" }])),
        ...(layout.price > 0 ? [BOARDS.price({ price: String(layout.price) })] : []),
      ]
    : missingLines(design, plan);
  return { text: [BOARDS.head({ planes: 1 }), ...lines].join("\n"), comesOut: layout !== undefined };
}

/** Bodies of a class on its boards. */
export function classBoardsText(
  { design, boards, cuts }: { design: Design; boards: readonly Board[]; cuts: readonly BoardCuts[] },
  layout: ClassLayout,
): string {
  const placed = layout.bodies.filter((body) => body !== undefined).length;
  const planes = layout.bodies.length;
  return [
    BOARDS.head({ planes }),
    ...(placed < planes ? [BOARDS.most({ planes, placed, most: layout.mostPlanes })] : []),
    ...(placed === 0 ? [] : [[wasteText(boards, cuts), ...(layout.price > 0 ? [priceText(layout)] : [])].join(" ")]),
    ...cuts.map(({ board, parts, cuts: own, waste }) => {
      const head = boardHead(design, boards[board]!, waste);
      return `${head}; ${parts.length} parts, ${own.length} cuts`;
    }),
  ].join("\n");
}

/** Of all boards that are cut, as of each. */
function wasteText(boards: readonly Board[], cuts: readonly BoardCuts[]): string {
  const volumes = cuts.map(({ board }) => volumeOf(wholeBoard(boards[board]!, board).box));
  const whole = volumes.reduce((sum, volume) => sum + volume, 0);
  const waste = cuts.reduce((sum, own, i) => sum + own.waste * volumes[i]!, 0);
  return BOARDS.waste({ waste: formatPercent(waste / whole, 0) });
}

/** The price, and how far from least it may be. */
function priceText({ price, leastPrice }: ClassLayout): string {
  const least = Math.ceil(leastPrice - 1e-9);
  const gap = least < price ? formatPercent(1 - leastPrice / price, 0) : undefined;
  return BOARDS.bound({ price: String(price), least: String(least), gap });
}

const boardHead = (design: Design, board: Board, waste: number): string =>
  BOARDS.board({
    name: board.name,
    size: sizeText(design, [board.length, board.width, board.thickness]),
    heart: board.heart,
    waste: formatPercent(waste, 0),
  });

const sizeText = (design: Design, [first, second, last]: readonly [number, number, number]): string =>
  `${formatBareLength(first, design)} × ${formatBareLength(second, design)} × ${formatLength(last, design)}`;

const boxText = (design: Design, { x, y, z }: BoardBox): string =>
  sizeText(design, [x.to - x.from, y.to - y.from, z.to - z.from]);

const cutLines = (design: Design, boards: readonly Board[], all: readonly BoardCuts[]): string[] =>
  all.flatMap(({ board, parts, cuts, rest, waste }) => [
    "",
    boardHead(design, boards[board]!, waste),
    ...cuts.map(({ axis, kerf, piece }, i) => {
      const at = formatLength(kerf.from - piece[axis].from, design);
      return `  ${BOARDS.cut[axis]({ number: i + 1, at })}`;
    }),
    ...parts.map(({ name, lay, box }) => {
      const rings = formatAngle(ringsToSole(boards[board]!, lay));
      return `  ${BOARDS.part({ name, size: boxText(design, box), rings })}`;
    }),
    ...(rest.length > 0 ? [`  ${BOARDS.left({ sizes: rest.map((box) => boxText(design, box)) })}`] : []),
  ]);

function missingLines(design: Design, { boards, missing, remedies }: BoardPlan): string[] {
  const changes = remedies.map(({ parameter, value }) =>
    BOARDS.change({
      parameter,
      from: formatParameter(parameter, valueAt(design, parameter)!, design),
      to: formatParameter(parameter, value, design),
    }),
  );
  return [
    BOARDS.noFit,
    ...boards.map(({ name }, i) => {
      const short = missing.find(({ board }) => board === i);
      if (!short) return `  ${BOARDS.tooFar({ name })}`;
      return `  ${BOARDS.missing({ name, by: formatLength(short.by, design), side: short.side })}`;
    }),
    ...(changes.length > 0 ? [BOARDS.fix({ changes })] : []),
  ];
}
