// Small faults put into a source, one at a time: what each replaces, and by what. The source itself is never written.
import { parseAst } from "vitest/node";
import { isLayoutMeasure } from "./layout-measures.js";

/** Operators, and what each is mistaken for. */
const SWAPPED = {
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "%": ["*"],
  "**": ["*"],
  "<": ["<=", ">="],
  "<=": ["<", ">"],
  ">": [">=", "<="],
  ">=": [">", "<"],
  "===": ["!=="],
  "!==": ["==="],
  "&&": ["||"],
  "||": ["&&"],
  "??": ["&&"],
};
/** Names that are easily taken for one another. */
const MISTAKEN = {
  sinDeg: "cosDeg",
  cosDeg: "sinDeg",
  tanDeg: "cotDeg",
  cotDeg: "tanDeg",
  min: "max",
  max: "min",
  floor: "ceil",
  ceil: "floor",
  every: "some",
  some: "every",
  from: "to",
  to: "from",
  x: "y",
  y: "x",
  up: "down",
  down: "up",
  atLeast: "atMost",
  atMost: "atLeast",
};

/**
 * @typedef {{ kind: string, start: number, end: number, text: string, line: number, was: string, ofLayout: boolean }} Mutant
 * @param {string} code TypeScript
 * @param {string} file its path from the root
 * @returns {Mutant[]} in the order of the source; each leaves a program that still parses
 */
export function mutantsOf(code, file) {
  const found = [];
  visit(parseAst(code, { lang: "ts" }), [], (node, ancestors) => {
    const ofLayout = isLayoutMeasure(file, node, ancestors);
    mutate(node, ancestors.at(-1) ?? {}, code, (kind, start, end, text) => {
      const line = code.slice(0, start).split("\n").length;
      if (parses(`${code.slice(0, start)}${text}${code.slice(end)}`))
        found.push({ kind, start, end, text, line, was: code.slice(start, end), ofLayout });
    });
  });
  return found.sort((a, b) => a.start - b.start || a.end - b.end);
}

function mutate(node, parent, code, add) {
  if (node.type === "BinaryExpression" || node.type === "LogicalExpression") {
    const between = code.slice(node.left.end, node.right.start);
    const at = node.left.end + between.indexOf(node.operator);
    for (const other of SWAPPED[node.operator] ?? []) add("operator", at, at + node.operator.length, other);
  }
  if (node.type === "UnaryExpression" && (node.operator === "-" || node.operator === "!"))
    add("sign", node.start, node.argument.start, "");
  if (node.type === "ConditionalExpression") {
    add("condition", node.test.start, node.test.end, "true");
    add("condition", node.test.start, node.test.end, "false");
  }
  if (node.type === "IfStatement") add("condition", node.test.start, node.test.end, "false");
  if (node.type === "Literal" && typeof node.value === "number" && parent.type !== "TSLiteralType")
    add(
      "number",
      node.start,
      node.end,
      node.value === 0 ? "1" : `(${node.raw} ${isCount(node, parent) ? "+ 1" : "* 1.1"})`,
    );
  if (node.type === "Literal" && typeof node.value === "boolean")
    add("truth", node.start, node.end, String(!node.value));
  if (node.type === "SpreadElement") add("left out", node.start, node.end, "...[]");
  if (isRead(node, parent) && Object.hasOwn(MISTAKEN, node.name))
    add("name", node.start, node.end, MISTAKEN[node.name]);
}

/** What the language cuts to whole numbers: a tenth more of these is the same program. */
const COUNTED = new Set(["padStart", "padEnd", "toFixed", "repeat"]);
const isCount = (node, parent) =>
  (parent.type === "CallExpression" && parent.callee !== node && COUNTED.has(parent.callee.property?.name)) ||
  (parent.type === "Property" && parent.value === node && parent.key.name === "decimals");

/** Called or read off something; not a key, a declaration or an import. */
const isRead = (node, parent) =>
  node.type === "Identifier" &&
  ((parent.type === "CallExpression" && parent.callee === node) ||
    (parent.type === "MemberExpression" && parent.property === node && !parent.computed));

function visit(node, ancestors, meet) {
  if (node.type?.startsWith("TS") && !/NonNull|As|Satisfies/.test(node.type)) return; // types never run
  if (/^(Import|ExportAll)/.test(node.type)) return;
  meet(node, ancestors);
  for (const [key, child] of Object.entries(node)) {
    if (key === "typeAnnotation" || key === "returnType" || key === "typeArguments") continue;
    for (const each of Array.isArray(child) ? child : [child]) if (each?.type) visit(each, [...ancestors, node], meet);
  }
}

function parses(code) {
  try {
    parseAst(code, { lang: "ts" });
    return true;
  } catch {
    return false;
  }
}
