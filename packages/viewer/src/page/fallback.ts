// What the sheet falls back to where something cannot be used, and what it says of that. Nothing that was refused is kept.
import type { RefusedResponse, TextRefusedResponse } from "../protocol/messages.ts";
import type { AddressState, DesignOrigin } from "../state/address.ts";
import { type AvailableOrigins, initialOrigin, leftOutTexts } from "../state/design-origin.ts";
import { faultTexts } from "../state/fault-texts.ts";
import type { SheetState, Store } from "../state/store.ts";
import type { DesignLoader } from "./design-loader.ts";
import type { FaultList } from "./fault-list.ts";

interface FallbackContext {
  readonly store: Store;
  readonly faults: FaultList;
  readonly available: AvailableOrigins;
}

type Drawn = Pick<SheetState, "origin" | "changes">;

export class Fallback {
  readonly #context: FallbackContext;
  /** What the address asked for and was left out, in words; until something else is done. */
  #leftOut: readonly string[] = [];
  #lastDrawn: Drawn | undefined;

  constructor(context: FallbackContext) {
    this.#context = context;
  }

  /** What was drawn, to go back to. */
  keep(drawn: Drawn): void {
    this.#lastDrawn = drawn;
  }

  reportAddress(address: AddressState): void {
    this.#leftOut = leftOutTexts(address, this.#context.available);
    this.#context.faults.showActionFaults(this.#leftOut);
  }

  /** Something else is done: the words about the last action go. */
  clear(): void {
    this.#leftOut = [];
    this.#context.faults.showActionFaults([]);
  }

  /** Back to what was drawn last, where anything was. */
  restoreLast(words: readonly string[]): void {
    if (this.#lastDrawn) this.#restore(this.#lastDrawn, words);
  }

  /** A text is no design. A followed file is waited for. */
  textRefused({ base, faults }: TextRefusedResponse, loader: DesignLoader): void {
    if (base !== loader.base) return;
    const words = faultTexts(faults);
    if (this.#context.store.now().origin.kind === "followed") loader.refused(words);
    else this.#restore(this.#lastDrawn ?? this.#first(), words);
  }

  /** Changes that the table does not allow are taken back; where none of them is at fault, all that was not drawn. */
  changesRefused({ faults }: RefusedResponse): void {
    const { origin, changes } = this.#context.store.now();
    const sound = new Map([...changes].filter(([path]) => !faults.some((fault) => fault.path === path)));
    const isSounder = sound.size < changes.size;
    this.#restore(isSounder ? { origin, changes: sound } : (this.#lastDrawn ?? this.#first()), faultTexts(faults));
  }

  #first(): Drawn {
    const origin: DesignOrigin = initialOrigin(undefined, this.#context.available);
    return { origin, changes: new Map() };
  }

  #restore({ origin, changes }: Drawn, words: readonly string[]) {
    const leftOut = this.#leftOut;
    this.#context.store.retract(origin, changes);
    this.#leftOut = leftOut;
    this.#context.faults.showActionFaults([...leftOut, ...words]);
  }
}
