// The text of an exchange structure as ISO 10303-21 has it: header, and instances by their numbers. It knows no entity.

export type Parameter =
  | { readonly kind: "integer" | "real"; readonly value: number }
  | { readonly kind: "string" | "enumeration" | "binary"; readonly text: string }
  | { readonly kind: "reference"; readonly to: number }
  | { readonly kind: "unset" | "derived" }
  | { readonly kind: "list"; readonly items: readonly Parameter[] }
  | { readonly kind: "typed"; readonly record: SimpleRecord };

/** A keyword with its parameters. */
export interface SimpleRecord {
  readonly keyword: string;
  readonly parameters: readonly Parameter[];
}

export interface ExchangeStructure {
  readonly header: readonly SimpleRecord[];
  /** One record of a simple instance, several of a complex one. */
  readonly instances: ReadonlyMap<number, readonly SimpleRecord[]>;
}

/** @see ISO 10303-21:2016, 5.4 and 6.4: tokens; a real has a decimal point, its exponent a capital E */
const TOKENS = {
  special: /ISO-10303-21|END-ISO-10303-21/y,
  real: /[+-]?[0-9]+\.[0-9]*(?:E[+-]?[0-9]+)?/y,
  integer: /[+-]?[0-9]+/y,
  keyword: /[A-Z_][A-Z0-9_]*/y,
  string: /'(?:[ -&(-~]|'')*'/y,
  reference: /#[0-9]+/y,
  enumeration: /\.[A-Z_][A-Z0-9_]*\./y,
  binary: /"[0-3][0-9A-F]*"/y,
  sign: /[(),;=$*]/y,
} as const;
const KINDS = Object.keys(TOKENS) as (keyof typeof TOKENS)[];
type TokenKind = keyof typeof TOKENS | "end";
interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  readonly line: number;
}

/** White space and comments, which may stand between any two tokens. */
const BETWEEN = /(?:[ \r\n\t]|\/\*[\s\S]*?\*\/)+/y;

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let [at, line] = [0, 1];
  const take = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found === undefined) return undefined;
    at += found.length;
    for (const c of found) if (c === "\n") line++;
    return found;
  };
  for (take(BETWEEN); at < text.length; take(BETWEEN)) {
    const begun = line;
    const token = KINDS.reduce<Token | undefined>((found, kind) => {
      const taken = found ? undefined : take(TOKENS[kind]);
      return taken === undefined ? found : { kind, text: taken, line: begun };
    }, undefined);
    if (!token) throw new Error(`line ${line}: ${JSON.stringify(text.slice(at, at + 20))} is no token`);
    tokens.push(token);
  }
  tokens.push({ kind: "end", text: "", line });
  return tokens;
}

/** The structure that a text is. @throws Error that tells the line where the text is none */
export function parseExchangeStructure(text: string): ExchangeStructure {
  const reader = new Reader(tokensOf(text));
  reader.take("special", "ISO-10303-21");
  reader.take("sign", ";");
  const header = reader.section("HEADER", () => reader.record());
  const instances = new Map<number, readonly SimpleRecord[]>();
  reader.section("DATA", () => {
    const number = Number(reader.take("reference").slice(1));
    if (instances.has(number)) throw new Error(`#${number} stands twice`);
    reader.take("sign", "=");
    instances.set(number, reader.instance());
  });
  reader.take("special", "END-ISO-10303-21");
  reader.take("sign", ";");
  reader.take("end");
  return { header, instances };
}

class Reader {
  readonly #tokens: readonly Token[];
  #at = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  take(kind: TokenKind, text?: string): string {
    const token = this.#tokens[this.#at]!;
    if (token.kind !== kind || (text !== undefined && token.text !== text))
      throw new Error(`line ${token.line}: ${text ?? kind} is wanted, not ${token.text || token.kind}`);
    this.#at++;
    return token.text;
  }

  section<T>(name: string, read: () => T): T[] {
    this.take("keyword", name);
    this.take("sign", ";");
    const found: T[] = [];
    while (!this.#isNext("ENDSEC")) {
      found.push(read());
      this.take("sign", ";");
    }
    this.take("keyword");
    this.take("sign", ";");
    return found;
  }

  record(): SimpleRecord {
    return { keyword: this.take("keyword"), parameters: this.#list() };
  }

  instance(): SimpleRecord[] {
    if (!this.#isNext("(")) return [this.record()];
    this.take("sign", "(");
    const records = [this.record()];
    while (!this.#isNext(")")) records.push(this.record());
    this.take("sign", ")");
    return records;
  }

  #isNext(text: string): boolean {
    const token = this.#tokens[this.#at]!;
    return token.text === text && token.kind !== "string";
  }

  #list(): Parameter[] {
    this.take("sign", "(");
    const items: Parameter[] = [];
    while (!this.#isNext(")")) {
      if (items.length > 0) this.take("sign", ",");
      items.push(this.#parameter());
    }
    this.take("sign", ")");
    return items;
  }

  #parameter(): Parameter {
    const { kind, text } = this.#tokens[this.#at]!;
    if (kind === "keyword") return { kind: "typed", record: this.record() };
    if (kind === "sign" && text === "(") return { kind: "list", items: this.#list() };
    this.take(kind);
    if (kind === "real" || kind === "integer") return { kind, value: Number(text) };
    if (kind === "reference") return { kind, to: Number(text.slice(1)) };
    if (kind === "string") return { kind, text: decodeString(text.slice(1, -1)) };
    if (kind === "enumeration" || kind === "binary") return { kind, text: text.slice(1, -1) };
    if (kind === "sign" && text === "$") return { kind: "unset" };
    if (kind === "sign" && text === "*") return { kind: "derived" };
    throw new Error(`line ${this.#tokens[this.#at - 1]!.line}: ${text || kind} is no parameter`);
  }
}

/** @see ISO 10303-21:2016, 6.4.3: doubled quotes and backslashes, \X2\ with four hexadecimal digits a character, \X\ with two */
function decodeString(text: string): string {
  const characters = (digits: string, each: number) =>
    (digits.match(new RegExp(`.{${each}}`, "g")) ?? []).map((code) => String.fromCharCode(parseInt(code, 16))).join("");
  return text.replace(
    /''|\\\\|\\X2\\((?:[0-9A-F]{4})+)\\X0\\|\\X\\([0-9A-F]{2})|\\/g,
    (code, wide?: string, narrow?: string) => {
      if (wide !== undefined) return characters(wide, 4);
      if (narrow !== undefined) return characters(narrow, 2);
      if (code === "\\") throw new Error(`${text}: a backslash that begins no code`);
      return code[0]!;
    },
  );
}
