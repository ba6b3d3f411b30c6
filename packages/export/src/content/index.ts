// Door: what a pack holds.
export { classCsv } from "./class-csv.ts";
export { CLASS_FILES, type ClassFile, type ClassInput, classFile } from "./class-files.ts";
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
