// Door: what a pack holds.
export { type Content, type PackOf, type Progress, packContent } from "./pack-content.ts";
