// The reference of every public door, read off the built declarations by TypeScript's own checker: what is said stands in the sources.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript-5";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
/** Packages that others import, lowest first. */
export const DOCUMENTED = ["geometry", "parameters", "bench", "sheets", "export", "cli"];

/** Every door of a package: the name it is imported by and its built declarations. */
function doorsOf(folder) {
  const { name, exports } = JSON.parse(readFileSync(`${ROOT}packages/${folder}/package.json`, "utf8"));
  const typed = Object.entries(exports).filter(([, { types }]) => types !== undefined); // package.json is no door
  return typed.map(([door, { types }]) => ({
    name: name + door.slice(1),
    file: `${ROOT}packages/${folder}/${types}`,
  }));
}

const KINDS = [
  [ts.SymbolFlags.Function, "function"],
  [ts.SymbolFlags.Class, "class"],
  [ts.SymbolFlags.Interface, "interface"],
  [ts.SymbolFlags.TypeAlias, "type"],
  [ts.SymbolFlags.Variable, "value"],
];

/** A value whose type can be called is a function to its caller. */
function kindOf(symbol, checker) {
  const kind = KINDS.find(([flag]) => symbol.flags & flag)?.[1];
  if (kind === undefined) throw new Error(`${symbol.name} is of no kind that is told`);
  if (kind !== "value") return kind;
  return checker.getTypeOfSymbol(symbol).getCallSignatures().length > 0 ? "function" : "value";
}

/** As the declarations have it, `export` and `declare` left out; a member keeps its own docstring. */
const signatureOf = (declaration) => {
  const whole = ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration;
  return whole
    .getText()
    .replace(/^export (default )?/, "")
    .replace(/^declare /, "");
};

const docOf = (symbol, checker) => {
  const tags = symbol
    .getJsDocTags(checker)
    .map(({ name, text }) => `*@${name}* ${ts.displayPartsToString(text)}`.trim());
  return [ts.displayPartsToString(symbol.getDocumentationComment(checker)), ...tags].filter(Boolean).join("  \n");
};

function entry(exported, checker) {
  const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const signatures = [...new Set(symbol.declarations.map(signatureOf))];
  const parts = [`### ${exported.name}`, kindOf(symbol, checker), docOf(symbol, checker)];
  return [...parts, `\`\`\`ts\n${signatures.join("\n")}\n\`\`\``].filter(Boolean).join("\n\n");
}

/** The reference of every documented package, a page each. @throws where the packages are not built */
export function apiTexts() {
  const packages = DOCUMENTED.map((folder) => ({ folder, doors: doorsOf(folder) }));
  const program = ts.createProgram(
    packages.flatMap(({ doors }) => doors.map(({ file }) => file)),
    {
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      allowImportingTsExtensions: true,
      noEmit: true,
      skipLibCheck: true,
      types: [],
    },
  );
  const checker = program.getTypeChecker();
  const doorText = ({ name, file }) => {
    const source = program.getSourceFile(file);
    if (source === undefined) throw new Error(`${file} is missing: build first`);
    const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(source));
    const entries = exported.sort((a, b) => (a.name < b.name ? -1 : 1)).map((symbol) => entry(symbol, checker));
    return `## ${name}\n\n${entries.join("\n\n")}`;
  };
  return packages.map(({ folder, doors }) => ({
    path: `packages/${folder}/api.md`,
    text: `# Reference of @lamplane/${folder}\n\nWritten by \`pnpm run docs\` from the sources' docstrings: every name of every public door. Lengths are mm and angles degrees.\n\n${doors.map(doorText).join("\n\n")}\n`,
  }));
}
