// The build under way: its text, the way back, and what keeps both over a reload. Every entry goes through the worker first.

import type { BenchAnswer, BenchBuild, BenchEntry } from "../protocol/bench-build.ts";
import { benchStepIn, formatBenchAddress, parseAddress } from "../state/address.ts";
import { setAddressBar } from "../state/address-bar.ts";
import { EXAMPLES } from "../state/examples.ts";
import type { BenchClient } from "./bench-client.ts";
import { type KeptBuild, keepBuild, keptBuilds, keptWithText, newBuildId } from "./kept-builds.ts";

export interface BuildSession {
  readonly kept: KeptBuild;
  /** Whether the browser holds it. */
  readonly isKept: boolean;
  readonly build: BenchBuild | undefined;
  /** Opens a build: another one of this device, or a text. */
  open(kept: KeptBuild): Promise<BenchAnswer>;
  /** @param words what is entered, for the way back */
  enter(entry: BenchEntry, words: string, at: string): Promise<BenchAnswer>;
  /** @returns what was taken back, in words; undefined where there is nothing */
  undo(): Promise<string | undefined>;
  /** Puts the step that is shown into the address. */
  showStep(step: string): void;
}

/** The build that an address asks for: kept here, or new; with none in the address the newest of this device. */
export function buildFromAddress(hash: string): { kept: KeptBuild; step: string | undefined } {
  const { origin } = parseAddress(hash);
  const step = benchStepIn(hash);
  const named =
    origin?.kind === "text"
      ? origin
      : origin?.kind === "followed"
        ? origin.copy
        : origin && Object.hasOwn(EXAMPLES, origin.name)
          ? { name: `${origin.name}.yaml`, text: EXAMPLES[origin.name]! }
          : undefined;
  if (named) return { kept: keptWithText(named.text) ?? newBuild(named.name, named.text), step };
  const newest = keptBuilds()[0];
  if (newest) return { kept: newest, step };
  const [name, text] = Object.entries(EXAMPLES)[0]!;
  return { kept: newBuild(`${name}.yaml`, text), step };
}

export const newBuild = (name: string, text: string): KeptBuild => ({ id: newBuildId(), name, text, past: [] });

export function createBuildSession(client: BenchClient, start: KeptBuild): BuildSession {
  let kept = start;
  let isKept = true;
  let build: BenchBuild | undefined;
  let step = "";

  const writeAddress = () => setAddressBar(formatBenchAddress(kept, step));
  const take = (next: KeptBuild, of: BenchBuild) => {
    kept = next;
    build = of;
    isKept = keepBuild(kept);
    writeAddress();
  };
  const ask = async (next: KeptBuild): Promise<BenchAnswer> => {
    const answer = await client.ask(next.text, next.name);
    if (answer.kind === "build") take(next, answer.build);
    return answer;
  };
  return {
    get kept() {
      return kept;
    },
    get isKept() {
      return isKept;
    },
    get build() {
      return build;
    },
    open: ask,
    async enter(entry, words, at) {
      const { text } = kept;
      const answer = await client.ask(text, kept.name, entry);
      if (answer.kind !== "build") return answer;
      const past = [...kept.past, { text, entry: words }];
      take({ ...kept, text: answer.build.text, past, reached: at }, answer.build);
      return answer;
    },
    async undo() {
      const last = kept.past.at(-1);
      if (!last) return undefined;
      const answer = await ask({ ...kept, text: last.text, past: kept.past.slice(0, -1) });
      return answer.kind === "build" ? last.entry : undefined;
    },
    showStep(next) {
      step = next;
      writeAddress();
    },
  };
}
