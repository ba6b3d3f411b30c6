// A folder of a class for tests of `lamplane class`: the school's base design, a roster to be written, and its packs.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readDesign } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { afterEach, beforeEach } from "vitest";
import { runCommand } from "./running.ts";

/** Made anew before each test of a file, and removed after it. */
export class ClassFolder {
  #folder = "";

  constructor() {
    beforeEach(() => {
      this.#folder = mkdtempSync(join(tmpdir(), "lamplane-class-"));
      cpSync("examples/class/school-smoother.yaml", this.base);
    });
    afterEach(() => rmSync(this.#folder, { recursive: true, force: true }));
  }

  at = (...names: string[]): string => join(this.#folder, ...names);
  get base(): string {
    return this.at("base.yaml");
  }
  get roster(): string {
    return this.at("class.csv");
  }
  get packs(): string {
    return this.at("packs");
  }

  writeRoster(text: string): void {
    writeFileSync(this.roster, text);
  }

  /** Runs `lamplane class` on the roster and the base. */
  run = (...more: string[]) => runCommand("class", this.roster, "--base", this.base, "--out", this.packs, ...more);

  planeFile = (name: string): string => join(this.packs, `${name}.yaml`);

  /** Names of the planes that have a design file. */
  planeNames = (): string[] =>
    readdirSync(this.packs)
      .filter((name) => /^[^.].*\.yaml$/.test(name))
      .map((name) => name.slice(0, -".yaml".length));

  /** The design in a plane's file. @throws Error for one with faults */
  design(name: string): Design {
    const read = readDesign(readFileSync(this.planeFile(name)), name);
    if (!read.ok) throw new Error(`${name}.yaml has faults`);
    return read.design;
  }
}
