// Sentences of a design's faults: what was read, what is allowed, what to do; without their place.
import { sentence } from "./sentence.ts";

const ALLOWED = { allowed: "35° to 65°" };
const BEGINNING = "start with `iron: { width: 48 mm, thickness: 3.6 mm }`";
/** What `shop: my-shop.yaml` means. */
export const SHOP_FILE_HELP =
  "Name of a shop file, from the design's folder; beside values of the design's own it stands under `file`.";
/** Where whoever reads a design reads no files. */
export const SHOP_NOT_OPENED = "no file can be opened here";
const FEATURES = { alias: "aliases (*)", anchor: "anchors (&)", tag: "tags (!)" } as const;

/** Faults of the file and of its keys. */
export const FILE_FAULT = {
  "not-yaml": sentence(({ problem }: { problem: string }) => `not YAML: ${problem}`, {
    problem: "a quote, bracket, comma or space is missing",
  }),
  "second-document": "a second document begins here; a file holds one plane",
  "yaml-directive": "a %YAML line is not read; leave it out",
  "yaml-feature": sentence(
    ({ feature, of }: { feature: keyof typeof FEATURES; of: "key" | "value" }) =>
      `${FEATURES[feature]} are not read${of === "value" ? "; write the value out" : ""}`,
    { feature: "alias", of: "value" },
    { feature: "tag", of: "key" },
  ),
  "merge-key": "merge keys (<<) are not read; write the keys out",
  "key-not-a-word": "a key is one word; write `key: value`",
  "doubled-key": sentence(
    ({ key, firstLine }: { key: string; firstLine: number }) =>
      `"${key}" stands on line ${firstLine} already; keep one`,
    { key: "angle", firstLine: 4 },
  ),
  "empty-design": `the design is empty; ${BEGINNING}`,
  "not-a-design": `a design is a list of keys and values; ${BEGINNING}`,
  "not-an-object": "a design is an object of keys and values",
  "empty-shop": "the shop file is empty; `lamplane new --shop FILE` writes one to start from",
  "not-a-shop": "a shop file is a list of keys and values; `lamplane new --shop FILE` writes one to start from",
  "not-of-a-shop": sentence(({ keys }: { keys: string }) => `this belongs in a design; a shop file takes ${keys}`, {
    keys: "units, shop, hand, jigs, router, cutters",
  }),
  "no-file-name": "write the name of a shop file, such as my-shop.yaml",
  "shop-not-read": sentence(({ name, problem }: { name: string; problem: string }) => `shop file ${name}: ${problem}`, {
    name: "my-shop.yaml",
    problem: "there is no such file beside the design",
  }),
  "not-a-list": "this is a list; write one item on each line, such as - { name: end-6, … }",
  "not-an-item": sentence(({ keys }: { keys: string }) => `an item of this list is a group of keys: ${keys}`, {
    keys: "name, kind, diameter",
  }),
  "doubled-name": sentence(
    ({ name, firstLine }: { name: string; firstLine: number }) =>
      `"${name}" is the name of the item on line ${firstLine} already; each has its own`,
    { name: "end-6", firstLine: 4 },
  ),
  "not-a-section": sentence(
    ({ keys }: { keys: string }) => `this is a section; write keys into it (${keys}), or leave it out`,
    { keys: "angle, featherChamfer" },
  ),
  "nested-too-deep": sentence(({ fault }: { fault: string }) => `${fault}; a design has three`, {
    fault: "nested more than 32 levels deep",
  }),
} as const;

/** A key that its section does not have. */
export const KEY_FAULT = {
  unknown: sentence(
    ({ key, section }: { key: string; section: string }) =>
      `"${key}" is not a key of ${section === "" ? "a design" : section}`,
    { key: "agle", section: "bed" },
    { key: "irn", section: "" },
  ),
  nested: sentence(({ as }: { as: string }) => `; write it nested, ${as}`, { as: "bed: { angle: … }" }),
  elsewhere: sentence(({ paths }: { paths: readonly string[] }) => `; it belongs in ${paths.join(" or ")}`, {
    paths: ["wedge.tip"],
  }),
  near: sentence(({ names }: { names: readonly string[] }) => `; did you mean ${names.join(" or ")}?`, {
    names: ["angle"],
  }),
  known: sentence(({ keys }: { keys: readonly string[] }) => `; known here: ${keys.join(", ")}`, {
    keys: ["angle", "featherChamfer"],
  }),
  afterComma: sentence(
    ({ isNumber }: { isNumber: boolean }) =>
      `; if it follows a comma, ${isNumber ? "write decimals with a point: 44.5 mm" : "put the text with the comma in quotes"}`,
    { isNumber: true },
    { isNumber: false },
  ),
} as const;

/** Faults of a value. */
export const VALUE_FAULT = {
  missing: sentence(({ help, allowed }: { help: string; allowed: string }) => `missing: ${help} Write ${allowed}`, {
    help: "Greatest width of the iron, just above the edge or at the top.",
    allowed: "8 mm to 120 mm",
  }),
  "no-value": sentence(
    ({ allowed }: { allowed: string }) => `no value; write ${allowed}, or leave the key out`,
    ALLOWED,
  ),
  "not-a-value": sentence(({ what, allowed }: { what: string; allowed: string }) => `read ${what}; write ${allowed}`, {
    what: "a list",
    ...ALLOWED,
  }),
  "nothing-solves": sentence(({ allowed }: { allowed: string }) => `auto cannot stand here; write ${allowed}`, ALLOWED),
  "not-a-number": sentence(({ read, reason }: { read: string; reason: string }) => `read "${read}": ${reason}`, {
    read: "18 ft",
    reason: "feet are not read; write inches or mm: 18 in",
  }),
  "not-finite": sentence(
    ({ read, allowed }: { read: string; allowed: string }) => `read ${read}, not a finite number; write ${allowed}`,
    {
      read: ".inf",
      ...ALLOWED,
    },
  ),
  "out-of-limits": sentence(
    ({ read, is, allowed }: { read: string; is: string; allowed: string }) =>
      `read ${read}${is && `, that is ${is}`}; allowed: ${allowed}`,
    { read: "300", is: "", ...ALLOWED },
    { read: "8", is: "8 in (203.2 mm)", allowed: "0 in (0 mm) to 0.787 in (20 mm)" },
  ),
  "too-many-lengths": sentence(
    ({ count, most }: { count: number; most: number }) => `read ${count} lengths; allowed: ${most} at most`,
    { count: 16, most: 15 },
  ),
  "not-whole": sentence(({ read }: { read: string }) => `read ${read}; write a whole number`, { read: "1.5" }),
  "number-for-text": sentence(
    ({ read, allowed, quoted }: { read: string; allowed: string; quoted: boolean }) =>
      `read the number ${read}; write ${allowed}${quoted ? `. If you mean ${read}, put it in quotes` : ""}`,
    { read: "12", allowed: "text of up to 60 characters", quoted: true },
  ),
  "hidden-in-text": "the text holds a hidden character; delete it",
  "empty-text": "the text is empty; write some, or leave the key out",
  "text-too-long": sentence(
    ({ length, most }: { length: number; most: string }) => `the text has ${length} characters; allowed: ${most}`,
    {
      length: 75,
      most: "60",
    },
  ),
  "text-not-of-pattern": sentence(
    ({ read, pattern }: { read: string; pattern: string }) => `read "${read}"; write ${pattern}`,
    {
      read: "my plane",
      pattern: "letters, digits, dots, dashes and underscores",
    },
  ),
  "unknown-choice": sentence(
    ({ read, choices, near }: { read: string; choices: readonly string[]; near: string | undefined }) =>
      `read "${read}"; write one of ${choices.join(", ")}${near === undefined ? "" : `. Did you mean ${near}?`}`,
    { read: "curvd", choices: ["auto", "straight", "curved"], near: "curved" },
  ),
} as const;

/** A value that is read, with what should stand in its place. */
export const VALUE_NOTE = {
  oldWord: sentence(
    ({ path, read, value }: { path: string; read: string; value: string }) =>
      `${path}: ${read} is the old word for ${value}; write ${value}`,
    { path: "stage", read: "glued", value: "glue-up" },
  ),
  formerKey: sentence(
    ({ former, key }: { former: string; key: string }) =>
      `measured.${former}: read from the line of the finished toe; ${key} is its name now, read from the toe end of the cheeks`,
    { former: "bedTipX", key: "bedTipFromEnd" },
  ),
  overShop: sentence(
    ({ path, own, shop, file }: { path: string; own: string; shop: string; file: string }) =>
      `${path}: the design's own ${own} holds, not ${shop} of ${file}; delete the key to follow the shop file`,
    { path: "shop.kerf", own: "3 mm", shop: "1.2 mm", file: "my-shop.yaml" },
  ),
  listOverShop: sentence(
    ({ path, file }: { path: string; file: string }) =>
      `${path}: the design's own list holds, not that of ${file}; delete the key to follow the shop file`,
    { path: "cutters", file: "my-shop.yaml" },
  ),
} as const;

/** What may stand in a row of the table. */
/** What stands in a value's place. */
export const VALUE_KINDS = { map: "a group of keys", list: "a list", innerList: "a list within the list" } as const;

/** What an editor shows beside a key. */
export const SCHEMA = {
  withUnit: "A number with its unit.",
  withUnits: "Lengths with their units.",
  bareNumbers: sentence(({ help, unit }: { help: string; unit: string }) => `${help} Bare numbers: ${unit}.`, {
    help: "Greatest width of the iron, just above the edge or at the top.",
    unit: "mm",
  }),
} as const;

export const ALLOWED_VALUES = {
  text: sentence(
    ({ most, pattern }: { most: number; pattern: string | undefined }) =>
      `text of up to ${most} characters${pattern === undefined ? "" : `: ${pattern}`}`,
    { most: 60, pattern: undefined },
  ),
  lengths: sentence(
    ({ words, most, min, max }: { words: readonly string[]; most: number; min: string; max: string }) =>
      `${words.join(", ")}, or up to ${most} lengths from ${min} to ${max}, as 17.3 mm + 15 mm + 17.3 mm`,
    { words: ["whole", "auto"], most: 15, min: "1 mm", max: "120 mm" },
  ),
  range: sentence(
    ({ min, max, auto }: { min: string; max: string; auto: boolean }) => `${min} to ${max}${auto ? ", or auto" : ""}`,
    { min: "40°", max: "85°", auto: true },
  ),
} as const;

/** Comments of a design to begin with. */
export const STARTER = {
  head: sentence(
    ({ title, isMeasured }: { title: string; isMeasured: boolean }) =>
      `A laminated hand plane: ${title}. ${isMeasured ? "Iron and billet are as you entered them." : 'Lines marked "Measure" hold examples: correct them by your own iron and billet.'} \`lamplane check\` says what else to change.`,
    { title: "a smoother", isMeasured: false },
    { title: "a jack", isMeasured: true },
  ),
  measure: sentence(({ words }: { words: string }) => `Measure. ${words}`, {
    words: "Length of the iron, edge to top.",
  }),
  proportions: sentence(
    ({ title, source }: { title: string; source: string }) => `Length, height and mouth for ${title}: ${source}.`,
    { title: "a smoother", source: "common practice, no published source" },
  ),
  others: "Every other value has a default. `lamplane explain` lists them; `lamplane new FILE --all` writes them out.",
  shopHere:
    "What belongs to the shop stands here too: a value of the design goes before the shop file's. Delete those that your shop file holds.",
  shopApart:
    "Saw, paper, printer and router stand in a shop file for all your planes: `lamplane new my-shop.yaml --shop`, and here `shop: my-shop.yaml`.",
  units: sentence(
    ({ units }: { units: "mm" | "in" }) =>
      `A length without a unit is in ${units === "mm" ? "millimetres" : "inches"}. 44.5 mm, 1.75 in and 1 3/4 in are read too.`,
    { units: "mm" },
    { units: "in" },
  ),
  row: sentence(({ help, allowed }: { help: string; allowed: string }) => `${help} Allowed: ${allowed}.`, {
    help: "Angle of the bed to the sole.",
    ...ALLOWED,
  }),
  empty: "fill in each once it is measured",
  shop: "What belongs to the shop and not to one plane. Name this file in a design: `shop: my-shop.yaml`, or enter --shop my-shop.yaml. A design's own values stand over these.",
  list: sentence(({ help }: { help: string }) => `${help} Keys of each:`, { help: "Cutters of the router." }),
  mustBeGiven: "Must be given.",
  leftOut: sentence(({ value }: { value: string }) => `Left out: ${value}.`, { value: "3 mm" }),
} as const;
