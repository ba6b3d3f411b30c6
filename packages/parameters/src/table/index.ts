// The table of every parameter, declared once: type, schema, messages, help and docs derive from it.
import { choice, text, type ValueOf, validateTable } from "../parameter.ts";
import { billet } from "./billet.ts";
import { bed, body, mouth, ramp, sole } from "./body.ts";
import { core } from "./core.ts";
import { hand } from "./hand.ts";
import { pegs, pin, recess, wedge } from "./hardware.ts";
import { capIron, iron } from "./iron.ts";
import { jigs } from "./jigs.ts";
import type { ListValues } from "./lists.ts";
import { measured } from "./measured.ts";
import { router } from "./router.ts";
import { shop } from "./shop.ts";
import { STEP_NAMES } from "./step-names.ts";
import { hold, wood } from "./wood.ts";

export const TABLE = validateTable({
  name: text({
    default: "plane",
    maxLength: 60,
    pattern: {
      // a folder on every system: see Microsoft, "Naming Files, Paths, and Namespaces"; without flags, since the schema has none
      regex:
        /^(?!(?:[Cc][Oo][Nn]|[Pp][Rr][Nn]|[Aa][Uu][Xx]|[Nn][Uu][Ll]|[Cc][Oo][Mm]\d|[Ll][Pp][Tt]\d)(?:\.|$))[A-Za-z0-9](?:[A-Za-z0-9._-]*[A-Za-z0-9_-])?$/,
      words:
        "letters, digits, dots, dashes and underscores, beginning with a letter or digit and not ending with a dot; no word that Windows keeps for a device, such as con, nul or com1",
    },
    name: "plane name",
    help: "Name of the plane, and of the folder of its pack.",
    source: "maker's choice",
  }),
  units: choice({
    choices: ["mm", "in"],
    default: "mm",
    name: "unit",
    help: "Unit of every length in the file that has none of its own.",
    source: "maker's choice",
  }),
  stage: choice({
    choices: STEP_NAMES,
    default: "dry-fit",
    oldChoices: { blank: "dry-fit", glued: "glue-up", trued: "shaping" },
    name: "stage drawn",
    help: "Step at which the parts are drawn. Up to the dry fit they have sole allowance and waste; from the glue-up on they are trimmed to length; once the sole is trued they are finished.",
    source: "order of the work",
  }),
  iron,
  capIron,
  body,
  bed,
  ramp,
  mouth,
  sole,
  core,
  recess,
  wedge,
  pin,
  pegs,
  wood,
  hold,
  shop,
  hand,
  billet,
  jigs,
  router,
  measured,
});

/** What a maker asked for, every default filled in, every `auto` still standing. Lengths mm, angles degrees. */
export type Design = ValueOf<typeof TABLE> & ListValues;

export type { ChoiceRow, LengthsRow, ListRow, NumberRow, Quantity, Row, TableSection, TextRow } from "../parameter.ts";
export { isRow, rowsOf, UNIT_OF } from "../parameter.ts";
export { commonInches, defaultIn } from "./default-value.ts";
export {
  type BoardEntry,
  type Cutter,
  isListName,
  LIST_NAMES,
  LISTS,
  type ListName,
  listRows,
  listsWithin,
  type Sheet,
} from "./lists.ts";
export type { Measurement } from "./measured.ts";
export { COMMON_PRACTICE, isAssumption, isOwnReading, ON_IRON, PLANE_GEOMETRY } from "./sources.ts";
export { STEP_NAMES, type Stage, type Step, WORK_AFTER, WORK_STAGES, type WorkStage } from "./step-names.ts";
