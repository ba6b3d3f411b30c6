// The instances of a STEP file: numbered in the order in which they are written, equal points and directions once.
import type { Vec3 } from "@lamplane/geometry/mesh";

/** Decimals of a length in mm and of a direction: engines' sines differ in the sixteenth digit, and files must not. */
const DECIMALS = { length: 9, direction: 12 } as const;

/** A reference to an instance: "#12". */
export type Reference = `#${number}`;

/** A real as ISO 10303-21 writes it: with a decimal point, an exponent by E. */
export function formatReal(value: number, decimals: number = DECIMALS.length): string {
  const text = String(Number(value.toFixed(decimals)) + 0).toUpperCase(); // + 0 makes −0 a 0
  const [mantissa, exponent] = text.split("E");
  return `${mantissa!.includes(".") ? mantissa : `${mantissa}.`}${exponent === undefined ? "" : `E${exponent}`}`;
}

/** A string as ISO 10303-21 writes it. @see ISO 10303-21:2016, 6.4.3: quotes and backslashes doubled, others by \X2\ */
export function formatString(text: string): string {
  const coded = text
    .replace(/['\\]/g, "$&$&")
    .replace(/[^ -~]+/g, (run) => `\\X2\\${[...toUtf16(run)].map(toHex).join("")}\\X0\\`);
  return `'${coded}'`;
}

const toUtf16 = (text: string): number[] => Array.from({ length: text.length }, (_, i) => text.charCodeAt(i));
const toHex = (code: number): string => code.toString(16).toUpperCase().padStart(4, "0");

export class Instances {
  readonly #lines: string[] = [];
  readonly #known = new Map<string, Reference>();

  /** Writes an instance. @param text the entity with its attributes, without number and semicolon */
  add(text: string): Reference {
    this.#lines.push(text);
    return `#${this.#lines.length}`;
  }

  /** The same, written once however often it is asked for. */
  addOnce(text: string): Reference {
    const known = this.#known.get(text) ?? this.add(text);
    this.#known.set(text, known);
    return known;
  }

  /** A point, mm. */
  point(p: Vec3): Reference {
    return this.addOnce(`CARTESIAN_POINT('',(${p.map((c) => formatReal(c)).join(",")}))`);
  }

  direction(d: Vec3): Reference {
    return this.addOnce(`DIRECTION('',(${d.map((c) => formatReal(c, DECIMALS.direction)).join(",")}))`);
  }

  /** Where something stands: its own z and x axes; y follows. */
  placement({ origin, z, x }: { readonly origin: Vec3; readonly z: Vec3; readonly x: Vec3 }): Reference {
    return this.addOnce(`AXIS2_PLACEMENT_3D('',${this.point(origin)},${this.direction(z)},${this.direction(x)})`);
  }

  /** All of them, a line each. */
  text(): string {
    return this.#lines.map((line, i) => `#${i + 1}=${line};\n`).join("");
  }
}
