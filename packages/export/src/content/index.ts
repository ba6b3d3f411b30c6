// Door: what a pack holds.
export {
  designState,
  makePackContent,
  type PackContent,
  type PackInput,
  type PackSection,
  type Progress,
  SECTIONS,
} from "./pack-content.ts";
