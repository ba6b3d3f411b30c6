// JSON Schema of a design file, for editors; derived from the table. What it accepts is looser than readDesign.
import {
  defaultIn,
  isRow,
  type LengthsRow,
  LIST_NAMES,
  LISTS,
  type ListRow,
  type NumberRow,
  type Row,
  TABLE,
  type TableSection,
  UNIT_OF,
} from "../table/index.ts";
import { fromMillimetres, type Units } from "../units.ts";
import { SCHEMA, SHOP_FILE_HELP } from "../words/design-faults.ts";
import { mayBeEmpty } from "./decode-section.ts";

type Schema = Record<string, unknown>;

/** @see JSON Schema 2020-12. Limits of bare lengths are in the file's unit, hence the two halves. */
export function designSchema(): Schema {
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "lamplane design",
    type: "object",
    if: { type: "object", properties: { units: { const: "in" } }, required: ["units"] },
    // biome-ignore lint/suspicious/noThenProperty: the schema's own word
    then: { $ref: "#/$defs/inches" },
    else: { $ref: "#/$defs/millimetres" },
    $defs: { millimetres: fileSchema("mm"), inches: fileSchema("in") },
  };
}

/** Lists and a shop file's name stand beside what the table holds. */
function fileSchema(units: Units): Schema {
  const schema = sectionSchema(TABLE, units) as { properties: Record<string, Schema> };
  const { shop, ...properties } = schema.properties;
  const lists = LIST_NAMES.map((name) => [name, listSchema(LISTS[name], units)]);
  return { ...schema, properties: { ...properties, shop: shopSchema(shop!), ...Object.fromEntries(lists) } };
}

function listSchema({ help, item, within = {} }: Pick<ListRow, "help" | "item" | "within">, units: Units): Schema {
  const items = sectionSchema(item, units);
  const lists = Object.entries(within).map(([key, list]) => [key, listSchema(list, units)]);
  const properties = { ...(items.properties as Schema), ...Object.fromEntries(lists) };
  return { type: ["array", "null"], description: help, items: { ...items, properties } };
}

function shopSchema(shop: Schema): Schema {
  const file = { type: "string", minLength: 1, description: SHOP_FILE_HELP };
  return { anyOf: [file, { ...shop, properties: { file, ...(shop.properties as Schema) } }] };
}

function sectionSchema(section: TableSection, units: Units): Schema {
  const entries = Object.entries(section);
  const required = entries.filter(([, entry]) => isRequired(entry)).map(([key]) => key);
  const schemas = entries.map(([key, entry]) => [
    key,
    isRow(entry) ? rowSchema(entry, units) : sectionSchema(entry, units),
  ]);
  const type = mayBeEmpty(section) ? ["object", "null"] : "object";
  return { type, additionalProperties: false, required, properties: Object.fromEntries(schemas) };
}

function isRequired(entry: Row | TableSection): boolean {
  return isRow(entry) ? "required" in entry && entry.required === true : Object.values(entry).some(isRequired);
}

function rowSchema(row: Row, units: Units): Schema {
  const description = row.help;
  if (row.kind === "choice") {
    const words = { type: "string", enum: [...row.choices] };
    const old = Object.keys(row.oldChoices ?? {});
    const allowed = old.length === 0 ? words : { anyOf: [words, { type: "string", enum: old, deprecated: true }] };
    return { ...allowed, default: defaultIn(row, units), description };
  }
  if (row.kind === "text") {
    const pattern = row.pattern ? { pattern: row.pattern.regex.source } : {};
    return {
      type: "string",
      minLength: 1,
      maxLength: row.maxLength,
      ...pattern,
      ...(row.required ? {} : { default: row.default }),
      description,
    };
  }
  if (row.kind === "lengths") return lengthsSchema(row, units);
  return numberSchema(row, units);
}

function lengthsSchema(row: LengthsRow, units: Units): Schema {
  const number = {
    type: "number",
    minimum: fromMillimetres(row.min, units),
    maximum: fromMillimetres(row.max, units),
  };
  const text = { type: "string", pattern: "[0-9¼-¾⅐-⅞]", description: SCHEMA.withUnits };
  return {
    description: `${row.help} Bare numbers: ${units}.`,
    anyOf: [{ enum: [...row.words] }, { type: "array", maxItems: row.most, items: { anyOf: [number, text] } }, text],
    default: row.default,
  };
}

function numberSchema(row: NumberRow<unknown>, units: Units): Schema {
  const isLength = row.quantity === "length";
  const inFile = (value: number): number => (isLength ? fromMillimetres(value, units) : value);
  const unit = isLength ? units : UNIT_OF[row.quantity];
  const type = row.quantity === "count" ? "integer" : "number";
  const number = { type, minimum: inFile(row.min), maximum: inFile(row.max) };
  const text = { type: "string", pattern: "[0-9¼-¾⅐-⅞]", description: SCHEMA.withUnit };
  const standard = defaultIn(row as NumberRow, units);
  const initial = typeof standard === "number" ? Number(inFile(standard).toFixed(6)) : standard;
  return {
    description: unit === "" ? row.help : SCHEMA.bareNumbers({ help: row.help, unit }),
    anyOf: row.auto === undefined ? [number, text] : [number, text, { const: "auto", description: row.auto }],
    ...(initial === undefined ? {} : { default: initial }),
  };
}
