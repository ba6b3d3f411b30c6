// Which text the sheet is drawn from: the one that was to be opened last. While a followed file cannot be had, or is no design,
// that is the file as it was read last.
import type { ShopSource } from "@lamplane/parameters/design";
import type { DesignOrigin } from "../state/address.ts";
import type { Engine } from "../state/engine.ts";
import { EXAMPLES } from "../state/examples.ts";
import type { Store } from "../state/store.ts";
import type { FaultList } from "./fault-list.ts";
import type { FollowedFile, FollowedText } from "./followed-file.ts";

interface LoaderContext {
  readonly store: Store;
  readonly engine: Engine;
  readonly followed: FollowedFile | undefined;
  readonly faults: FaultList;
  /** The text is another one: what is drawn must be asked for anew. */
  requestSheet(): void;
  /** There is no such text, nor was there: back to what was drawn before. */
  restoreLast(words: readonly string[]): void;
}

interface SentText {
  readonly base: number;
  readonly text: string;
  readonly shop: ShopSource | undefined;
  readonly isFile: boolean;
}

export class DesignLoader {
  readonly #context: LoaderContext;
  /** Texts that the workers were given and have not answered yet. */
  #sent: readonly SentText[] = [];
  /** The followed file as it was read last without a fault. */
  #read: SentText | undefined;
  #begun = 0;
  #base = 0;
  #origin: DesignOrigin | undefined;
  /** A base that stands in for a file that is not as it was read. */
  #keptBase: number | undefined;
  #fileIsRefused = false;

  constructor(context: LoaderContext) {
    this.#context = context;
  }

  /** Number of the text that is asked about. */
  get base(): number {
    return this.#base;
  }

  /** Whether a design's origin is that text, and no other that is still being read. */
  isLoadedFrom(origin: DesignOrigin): boolean {
    return origin === this.#origin;
  }

  /** Whether the followed file is another than the sheet shows, so that nothing may be written over it. */
  get fileIsRefused(): boolean {
    return this.#fileIsRefused;
  }

  get fileName(): string {
    const { origin } = this.#context.store.now();
    if (origin.kind === "followed") return this.#context.followed!.name;
    return origin.kind === "example" ? `${origin.name}.yaml` : origin.name;
  }

  /** Opens the text in which the design begins. */
  async begin(): Promise<void> {
    const { store, followed } = this.#context;
    const { origin } = store.now();
    this.#begun += 1;
    const begun = this.#begun;
    const read: FollowedText | undefined =
      origin.kind === "text"
        ? origin
        : origin.kind === "example"
          ? { text: EXAMPLES[origin.name]! }
          : await followed!.text();
    if (begun !== this.#begun) return; // the newest is opened
    if (read === undefined) return this.#goOnWithFile([]);
    if (origin.kind === "followed")
      store.keepFollowed(read.shop ? undefined : { name: followed!.name, text: read.text });
    this.#send(read, origin.kind === "followed");
  }

  /** A text is a design. */
  opened(base: number): void {
    const sent = this.#sent.find((each) => each.base === base);
    if (sent?.isFile) this.#read = sent;
    this.#answered(base);
    if (base !== this.#base || base === this.#keptBase) return;
    this.#fileIsRefused = false; // it has been read, or the sheet shows something else
    this.#context.faults.showFileFaults([]);
  }

  /** The followed file is no design now: the sheet goes on with it as it was read last. */
  refused(words: readonly string[]): void {
    this.#answered(this.#base);
    this.#refuse(words);
    this.#goOnWithFile(words);
  }

  /** The followed file cannot be had now; what was read of it before is drawn all the same. */
  lost(words: readonly string[]): void {
    if (this.#context.store.now().origin.kind !== "followed") return;
    this.#refuse(words);
    if (this.#sent.some(({ base, isFile }) => isFile && base === this.#base)) this.#keptBase = this.#base;
    else this.#goOnWithFile(words);
  }

  #refuse(words: readonly string[]): void {
    this.#fileIsRefused = true;
    this.#context.faults.showFileFaults(words);
  }

  #goOnWithFile(words: readonly string[]): void {
    if (this.#base === this.#read?.base) return;
    if (this.#read) {
      this.#keptBase = this.#base + 1;
      this.#send(this.#read, true);
    } else this.#context.restoreLast(words);
  }

  #send({ text, shop }: FollowedText, isFile: boolean): void {
    this.#base += 1;
    this.#origin = this.#context.store.now().origin;
    this.#sent = [...this.#sent, { base: this.#base, text, shop, isFile }];
    this.#context.engine.open(this.#base, text, this.fileName, shop);
    this.#context.requestSheet();
  }

  /** Texts are answered in their order. */
  #answered(base: number): void {
    this.#sent = this.#sent.filter((sent) => sent.base > base);
  }
}
