// Door: what a pack holds.
export { classCsv } from "./class-csv.ts";
export {
  designState,
  makePackContent,
  makeSheets,
  type PackChoice,
  type PackContent,
  type PackInput,
  type PackSection,
  type Progress,
  SECTIONS,
} from "./pack-content.ts";
