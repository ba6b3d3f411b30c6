// `lamplane mouth`: what to take off the sole for the mouth wanted, or what closes one that is too wide; and what truing costs.
import {
  asBuiltPlane,
  MOUTH_SOURCES,
  type MouthReading,
  mouthLife,
  mouthLifeCells,
  mouthLifeHead,
  mouthReading,
  mouthText,
  SHAVING,
} from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { TABLE } from "@lamplane/parameters/table";
import { formatLimit, parseLength } from "@lamplane/parameters/units";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";

/** As typed: lengths in the design's unit, or with their own. */
export interface MouthOptions {
  readonly seen: string;
  readonly wanted?: string | undefined;
  readonly shaving?: string | undefined;
  readonly json: boolean;
}

/** Thickness of any shaving that is taken off a sole, mm. */
const SHAVINGS = { min: 0.005, max: 0.5 };

/** Exit 1 where the mouth seen is too wide: taking wood off, which is what was asked, cannot mend it. */
export function mouthCommand(io: Io, design: Design, options: MouthOptions): Exit {
  const { seen, wanted, shaving } = options;
  const opening = TABLE.mouth.opening;
  const asked = {
    seen: parseLengthOption(design, "seen", seen, opening),
    wanted: wanted === undefined ? design.mouth.opening : parseLengthOption(design, "wanted", wanted, opening),
    shaving: shaving === undefined ? SHAVING : parseLengthOption(design, "shaving", shaving, SHAVINGS),
  };
  const plane = asBuiltPlane(design);
  const reading = mouthReading(plane, asked);
  const life = mouthLife(plane);
  if (options.json) io.out(`${JSON.stringify({ name: design.name, lengths: "mm", mouth: reading, life }, null, 2)}\n`);
  else io.out(`${[...mouthText(reading, plane), ...lifeText(design, life)].join("\n")}\n`);
  return exitCodeOf(reading);
}

const exitCodeOf = ({ verdict }: MouthReading): Exit => (verdict === "wide" ? EXIT.checkFailed : EXIT.done);

const lifeText = (design: Design, life: ReturnType<typeof mouthLife>): string[] => [
  "",
  mouthLifeHead(design),
  alignColumns(mouthLifeCells(life, design)),
  "",
  ...MOUTH_SOURCES,
];

interface OptionLimits {
  readonly min: number;
  readonly max: number;
}

/** A length from an option. @throws InputRefused with what was read and what is allowed */
function parseLengthOption({ units }: Design, name: string, text: string, { min, max }: OptionLimits): number {
  const read = parseLength(text, units);
  if ("fault" in read) throw new InputRefused(`--${name} ${text}: ${read.fault}`);
  if (read.value >= min && read.value <= max) return read.value;
  throw new InputRefused(
    `--${name} ${text}: read ${formatLimit(read.value, units)}; allowed is ${formatLimit(min, units)} to ${formatLimit(max, units)}`,
  );
}
