// `lamplane mouth`: what to take off the sole for the mouth wanted, or what closes one that is too wide; and what truing costs.
import {
  asBuiltPlane,
  MOUTH_SOURCES,
  type MouthReading,
  mouthLife,
  mouthLifeCells,
  mouthLifeEnd,
  mouthLifeHead,
  mouthReading,
  mouthSeenInMiddle,
  mouthSkew,
  mouthText,
  SHAVING,
  skewText,
  worstTilt,
} from "@lamplane/bench";
import { withValue } from "@lamplane/parameters/design";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { type Design, TABLE } from "@lamplane/parameters/table";
import { formatLimit, parseLength } from "@lamplane/parameters/units";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { alignColumns, foldColumns } from "../text.ts";
import { ARGUMENT_FAULT, MORE } from "../words/commands.ts";

/** As typed: lengths in the design's unit, or with their own. */
export interface MouthOptions {
  readonly seen?: string | undefined;
  /** Beside the cheeks: both or neither. */
  readonly left?: string | undefined;
  readonly right?: string | undefined;
  readonly wanted?: string | undefined;
  readonly shaving?: string | undefined;
  readonly json: boolean;
  /** Every row and column of the later truings, and the sources. */
  readonly all: boolean;
}

/** Thickness of any shaving that is taken off a sole, mm. */
const SHAVINGS = { min: 0.005, max: 0.5 };

/** Rows of the later truings in short. */
const MOST_ROWS = 7;

/** Exit 1 where the mouth seen is too wide: taking wood off, which is what was asked, cannot mend it. */
export function mouthCommand(io: Io, design: Design, options: MouthOptions): Exit {
  const { wanted, shaving } = options;
  const opening = TABLE.mouth.opening;
  const read = parseReadings(design, options);
  const asked = {
    seen: read.seen,
    wanted: wanted === undefined ? design.mouth.opening : parseLengthOption(design, "wanted", wanted, opening),
    shaving: shaving === undefined ? SHAVING : parseLengthOption(design, "shaving", shaving, SHAVINGS),
  };
  const plane = asBuiltPlane(design);
  const reading = mouthReading(plane, asked);
  const life = mouthLife(planeOnceTrued(plane, asked), undefined, asked.wanted);
  const askew = asBuiltPlane(read.besideCheeks);
  const skew = { ...mouthSkew(askew), tilt: worstTilt(askew) };
  if (options.json)
    io.out(`${JSON.stringify({ name: design.name, lengths: "mm", mouth: reading, skew, life }, null, 2)}\n`);
  else
    io.out(
      `${[...mouthText(reading, plane), ...skewText(askew), ...lifeText(design, life, options.all)].join("\n")}\n`,
    );
  return exitCodeOf(reading);
}

interface Readings {
  /** At the middle of the edge, mm. */
  readonly seen: number;
  /** The design with what was read beside the cheeks, where that was. */
  readonly besideCheeks: Design;
}

/** Without --seen the middle lies midway between the cheeks. @throws InputRefused where one cheek alone, or nothing, was read */
function parseReadings(design: Design, { seen, left, right }: MouthOptions): Readings {
  const parse = (name: string, text: string | undefined) =>
    text === undefined ? undefined : parseLengthOption(design, name, text, TABLE.mouth.opening);
  const read = {
    mouthSeen: parse("seen", seen),
    mouthSeenLeft: parse("left", left),
    mouthSeenRight: parse("right", right),
  };
  const middle = mouthSeenInMiddle(read);
  if (middle === undefined || (left === undefined) !== (right === undefined))
    throw new InputRefused(ARGUMENT_FAULT.mouthReading);
  const cheeks = left === undefined ? {} : { mouthSeenLeft: read.mouthSeenLeft, mouthSeenRight: read.mouthSeenRight };
  return { seen: middle, besideCheeks: { ...design, measured: { ...design.measured, ...cheeks } } };
}

/** The plane trued to the mouth wanted; with the mouth that was seen, where that is wider. */
const planeOnceTrued = ({ design }: Elevation, { seen, wanted }: { seen: number; wanted: number }): Elevation =>
  elevation(withValue(design, "mouth.opening", Math.max(seen, wanted)));

const exitCodeOf = ({ verdict }: MouthReading): Exit => (verdict === "wide" ? EXIT.checkFailed : EXIT.done);

function lifeText(design: Design, life: ReturnType<typeof mouthLife>, all: boolean): string[] {
  const apart = all ? 1 : Math.ceil(life.length / MOST_ROWS);
  const rows = life.filter((_, i) => i % apart === 0);
  const table = foldColumns(mouthLifeCells(rows, design, all))
    .map(alignColumns)
    .join("\n\n");
  return ["", mouthLifeHead(design), table, ...(all ? ["", mouthLifeEnd(design), ...MOUTH_SOURCES] : [MORE.mouth])];
}

interface OptionLimits {
  readonly min: number;
  readonly max: number;
}

/** A length from an option. @throws InputRefused with what was read and what is allowed */
function parseLengthOption({ units }: Design, name: string, text: string, { min, max }: OptionLimits): number {
  const read = parseLength(text, units);
  if ("fault" in read)
    throw new InputRefused(ARGUMENT_FAULT.option({ option: `--${name} ${text}`, fault: read.fault }));
  if (read.value >= min && read.value <= max) return read.value;
  const limits = { min: formatLimit(min, units), max: formatLimit(max, units) };
  const option = `--${name} ${text}`;
  throw new InputRefused(ARGUMENT_FAULT.limits({ option, read: formatLimit(read.value, units), is: "", ...limits }));
}
