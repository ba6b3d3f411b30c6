// `lamplane mouth`: what to take off the sole for the mouth wanted, or what closes one that is too wide; and what truing costs.
import {
  MOUTH_SOURCES,
  type MouthReading,
  mouthLifeCells,
  mouthLifeHead,
  mouthOverLife,
  mouthReading,
  mouthText,
  planeOf,
  SHAVING,
} from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { TABLE } from "@lamplane/parameters/table";
import { limitText, readLength } from "@lamplane/parameters/units";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { columns } from "../words.ts";

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
export function mouth(io: Io, design: Design, options: MouthOptions): Exit {
  const { seen, wanted, shaving } = options;
  const opening = TABLE.mouth.opening;
  const asked = {
    seen: lengthOption(design, "seen", seen, opening),
    wanted: wanted === undefined ? design.mouth.opening : lengthOption(design, "wanted", wanted, opening),
    shaving: shaving === undefined ? SHAVING : lengthOption(design, "shaving", shaving, SHAVINGS),
  };
  const plane = planeOf(design);
  const reading = mouthReading(plane, asked);
  const life = mouthOverLife(plane);
  if (options.json) io.out(`${JSON.stringify({ name: design.name, lengths: "mm", mouth: reading, life }, null, 2)}\n`);
  else io.out(`${[...mouthText(reading, plane), ...lifeText(design, life)].join("\n")}\n`);
  return exitOf(reading);
}

const exitOf = ({ verdict }: MouthReading): Exit => (verdict === "wide" ? EXIT.checkFailed : EXIT.done);

const lifeText = ({ units }: Design, life: ReturnType<typeof mouthOverLife>): string[] => [
  "",
  mouthLifeHead(units),
  columns(mouthLifeCells(life, units)),
  "",
  ...MOUTH_SOURCES,
];

interface Limits {
  readonly min: number;
  readonly max: number;
}

/** A length from an option. @throws InputRefused with what was read and what is allowed */
function lengthOption({ units }: Design, name: string, text: string, { min, max }: Limits): number {
  const read = readLength(text, units);
  if ("fault" in read) throw new InputRefused(`--${name} ${text}: ${read.fault}`);
  if (read.value >= min && read.value <= max) return read.value;
  throw new InputRefused(
    `--${name} ${text}: read ${limitText(read.value, units)}; allowed is ${limitText(min, units)} to ${limitText(max, units)}`,
  );
}
