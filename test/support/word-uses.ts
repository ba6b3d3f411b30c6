// Which sentences of the packages' words/ no source reads: exported functions, texts, and keys of exported tables.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript-5";

/** A sentence's way in: its package, the name exported, the keys below it. */
type Path = readonly [packageName: string, name: string, ...keys: string[]];

/** Its keys are another library's codes: YAML's, any of which a text may bring. */
const OUTSIDE_KEYS = new Set(["parameters.SYNTAX"]);

interface Source {
  readonly file: string;
  readonly tree: ts.SourceFile;
}

const isOfWords = (file: string): boolean => file.includes("/src/words/");
const packageOf = (file: string): string => file.split("/")[1] ?? "";
const keyOf = (path: readonly string[]): string => path.join(".");

/** Sentences in no source's way. @param files by path, `packages/NAME/src/…` */
export function unreadSentences(files: Readonly<Record<string, string>> = packageSources()): string[] {
  const sources = Object.entries(files).map(
    ([file, text]): Source => ({ file, tree: ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true) }),
  );
  const reads = sources.flatMap(readsIn);
  const whole = new Set(reads.flatMap(({ path, isChosen }) => (isChosen ? [] : [keyOf(path)])));
  const chosen = new Set(reads.flatMap(({ path, isChosen }) => (isChosen ? [keyOf(path)] : [])));
  const passed = new Set(reads.flatMap(({ path }) => path.map((_, i) => keyOf(path.slice(0, i + 1)))));
  const texts = textsOutsideWords(sources);
  const isRead = (path: Path): boolean =>
    OUTSIDE_KEYS.has(keyOf(path.slice(0, 2))) ||
    passed.has(keyOf(path)) ||
    path.some((_, i) => whole.has(keyOf(path.slice(0, i + 1)))) ||
    path.some((key, i) => i > 1 && chosen.has(keyOf(path.slice(0, i))) && texts.has(key));
  return sources
    .filter(({ file }) => isOfWords(file))
    .flatMap(sentencesIn)
    .filter((path) => !isRead(path))
    .map(keyOf);
}

const packageSources = (): Record<string, string> =>
  Object.fromEntries(
    readdirSync("packages")
      .flatMap((name) => sourcesIn(`packages/${name}/src`))
      .map((file) => [file, readFileSync(file, "utf8")]),
  );

const sourcesIn = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? sourcesIn(path) : path.endsWith(".ts") ? [path] : [];
  });

/** Everything exported that is no type, tables by each of their keys. */
function sentencesIn({ file, tree }: Source): Path[] {
  return tree.statements.flatMap((statement): Path[] => {
    const isExported = ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.some(isExport);
    if (!isExported) return [];
    if (ts.isFunctionDeclaration(statement) && statement.name) return [[packageOf(file), statement.name.text]];
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.flatMap(({ name, initializer }) =>
      pathsOf([packageOf(file), name.getText()], initializer),
    );
  });
}

const isExport = ({ kind }: ts.Modifier): boolean => kind === ts.SyntaxKind.ExportKeyword;

function pathsOf(path: Path, value: ts.Expression | undefined): Path[] {
  const table = value && withoutType(value);
  if (!table || !ts.isObjectLiteralExpression(table)) return [path];
  return table.properties.flatMap((entry) => {
    if (ts.isSpreadAssignment(entry)) return [];
    const key = textOf(entry.name);
    const inner = ts.isPropertyAssignment(entry) ? entry.initializer : undefined;
    return key === undefined ? [] : pathsOf([...path, key], inner);
  });
}

function withoutType(value: ts.Expression): ts.Expression {
  const isTyped = ts.isAsExpression(value) || ts.isSatisfiesExpression(value) || ts.isParenthesizedExpression(value);
  return isTyped ? withoutType(value.expression) : value;
}

const textOf = (name: ts.Node): string | undefined =>
  ts.isIdentifier(name) || ts.isStringLiteralLike(name) || ts.isNumericLiteral(name) ? name.text : undefined;

interface Read {
  readonly path: readonly string[];
  /** The key below it is a variable. */
  readonly isChosen: boolean;
}

/** What a source reads of words: what it imports of them, or of its own where it is one of them. */
function readsIn(source: Source): Read[] {
  const known = importedWords(source);
  const reads: Read[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeQueryNode(node)) return;
    const root = ts.isIdentifier(node) && isValue(node) ? known.get(node.text) : undefined;
    if (root) reads.push(...readFrom(node, root));
    ts.forEachChild(node, visit);
  };
  visit(source.tree);
  return reads;
}

/** Whether an identifier stands for what it names: it is no key, and nothing is named by it here. */
function isValue(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  return !(
    (ts.isPropertyAssignment(parent) || ts.isVariableDeclaration(parent) || ts.isFunctionDeclaration(parent)) &&
    parent.name === node
  );
}

function importedWords({ file, tree }: Source): Map<string, readonly string[]> {
  const known = new Map<string, readonly string[]>();
  if (isOfWords(file)) for (const [pkg, name] of sentencesIn({ file, tree })) known.set(name, [pkg, name]);
  for (const statement of tree.statements) {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
    const pkg = wordsPackage(file, statement.moduleSpecifier.text);
    const bindings = statement.importClause?.namedBindings;
    if (pkg === undefined || !bindings) continue;
    if (ts.isNamespaceImport(bindings)) known.set(bindings.name.text, [pkg]);
    else
      for (const { name, propertyName } of bindings.elements) known.set(name.text, [pkg, (propertyName ?? name).text]);
  }
  return known;
}

/** The package whose words a module is, or hands on. */
function wordsPackage(file: string, module: string): string | undefined {
  if (module.startsWith("@lamplane/")) return module.split("/")[1];
  const target = join(dirname(file), module);
  return target.startsWith("packages/") ? packageOf(target) : undefined;
}

/** Down the keys from an imported name to where they end. */
function readFrom(start: ts.Node, root: readonly string[]): Read[] {
  let [node, path] = [start, root];
  for (;;) {
    const { parent } = node;
    if (ts.isPropertyAccessExpression(parent)) path = [...path, parent.name.text];
    else if (ts.isElementAccessExpression(parent) && parent.expression === node) {
      if (!ts.isStringLiteralLike(parent.argumentExpression)) return [{ path, isChosen: true }];
      path = [...path, parent.argumentExpression.text];
    } else if (!ts.isNonNullExpression(parent) && !ts.isParenthesizedExpression(parent) && !ts.isAsExpression(parent)) {
      return keysTaken(parent, node).map((keys) => ({ path: [...path, ...keys], isChosen: false }));
    }
    node = parent;
  }
}

/** Keys that a pattern takes out of a table; none where the table itself is taken. */
function keysTaken(parent: ts.Node, node: ts.Node): string[][] {
  if (!ts.isVariableDeclaration(parent) || parent.initializer !== node || !ts.isObjectBindingPattern(parent.name))
    return [[]];
  return parent.name.elements.map(({ name, propertyName }) => [textOf(propertyName ?? name) ?? ""]);
}

/** Every text and name in the sources that are not words: a key that is a variable is among them. */
function textsOutsideWords(sources: readonly Source[]): Set<string> {
  const texts = new Set<string>();
  const visit = (node: ts.Node): void => {
    const text = textOf(node);
    if (text !== undefined) texts.add(text);
    ts.forEachChild(node, visit);
  };
  for (const { file, tree } of sources) if (!isOfWords(file)) visit(tree);
  return texts;
}
