// Door: what a pack holds.
export {
  makePackContent,
  type PackContent,
  type PackInput,
  type PackSection,
  type Progress,
  SECTIONS,
} from "./pack-content.ts";
