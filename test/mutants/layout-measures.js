// Which numbers are measures of layout: what a sheet or the page looks like, and nothing that it says.

/** Where things are drawn. What is drawn and said there is worked out elsewhere: `traveller/content`, `worker`, `state`, `protocol`. */
const DRAWN =
  /^packages\/(sheets\/src\/(boards|layout|pages|picture|plots|router|traveller\/(draw\/|sketch|views|window)|line-styles)|viewer\/src\/(bench|body|class|motion|notes|page|plots|router|share|sheet|steps)\b)/;
/** Published values, and how near a curve is followed: these say more than what it looks like. */
const HELD = new Set(
  "PAPERS BARS BEZIER_ERROR QUARTER_ERROR CHORDS RULE_STEPS MOST_CHARACTERS LARGEST RGBA BYTES".split(" "),
);
/** Properties that say how something looks, by their key in an object. */
const LOOKS = new Set(["size", "leading", "ascent", "gap", "padding", "shade", "dashes", "opacity", "duration"]);

/**
 * A number, not 0, in a file that draws, that is written as it is (alone, with a sign, in a list or an object, with no sum or product
 * round it) and makes a constant in capitals, or stands in a property that says how something looks.
 */
export function isLayoutMeasure(file, node, ancestors) {
  if (node.type !== "Literal" || typeof node.value !== "number" || node.value === 0 || !DRAWN.test(file)) return false;
  for (const above of ancestors.toReversed()) {
    if (above.type === "Property" && LOOKS.has(above.key.name)) return true;
    if (above.type === "VariableDeclarator") return isInCapitals(above.id);
    if (!PLAIN.has(above.type)) return false;
  }
  return false;
}

const PLAIN = new Set([
  "ArrayExpression",
  "ObjectExpression",
  "Property",
  "UnaryExpression",
  "TSAsExpression",
  "TSSatisfiesExpression",
]);

/** A name in capitals or a list of them; not one whose value a law holds. */
const isInCapitals = (id) =>
  id.type === "ArrayPattern"
    ? id.elements.every((each) => each && isInCapitals(each))
    : /^[A-Z][A-Z\d_]*$/.test(id.name ?? "") && !HELD.has(id.name);
