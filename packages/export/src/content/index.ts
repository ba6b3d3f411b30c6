// Door: what a pack holds.
export { type Content, type PackOf, type Progress, packContent, SECTIONS, type Section } from "./pack-content.ts";
