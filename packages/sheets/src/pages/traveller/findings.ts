// What the checks found, as a block.
import type { Traveller } from "../../traveller/index.ts";
import { FINDINGS } from "../../words/papers.ts";
import { type PageBlock, stackBlocks } from "../blocks/block.ts";
import { headingBlock, paragraphBlock } from "../blocks/text.ts";

export function findingsBlock(findings: Traveller["findings"], width: number): PageBlock {
  const paragraphs = findings.map(({ severity, message }) => paragraphBlock(`${FINDINGS[severity]} ${message}`, width));
  return stackBlocks(
    headingBlock(FINDINGS.heading, width),
    ...(paragraphs.length === 0 ? [paragraphBlock(FINDINGS.none, width)] : paragraphs),
  );
}
