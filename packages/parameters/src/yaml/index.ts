// Door to makers' files as text: YAML → a tree with places, faults as data, and edits that leave the rest as it is.
export { applyEdits, type Edit } from "./edits.ts";
export {
  FaultCollector,
  type FaultDetail,
  type LocatedFault,
  type SourceDetail,
  type SourcePosition,
} from "./fault.ts";
export { parseYaml, type SyntaxProblem, type YamlDocument } from "./parse.ts";
export type { RawEntry, RawNode, YamlFeature } from "./raw-node.ts";
export { LARGEST_FILE } from "./source.ts";
