// The sheet as a whole: the way of a change from the hand through the worker to the drawing. The newest question wins.
import { PLOT_SIZE } from "@lamplane/sheets";
import type { Answer } from "../protocol.ts";
import { type Addressed, type Beginning, readAddress } from "../state/address.ts";
import { firstBeginning, leftOutOf } from "../state/beginning.ts";
import { type Engine, startEngine } from "../state/engine.ts";
import { EXAMPLES } from "../state/examples.ts";
import { createStore, type Held, type Store } from "../state/store.ts";
import SheetWorker from "../worker/worker.ts?worker&inline";
import { Clock } from "./clock.ts";
import { Drawing } from "./drawing.ts";
import { dropFiles, type OpenedFile, readFile, saveText } from "./files.ts";
import { type Followed, followed } from "./followed.ts";
import { watchForHints } from "./hint.ts";
import { watchKeys } from "./keys.ts";
import { Opening } from "./opening.ts";
import { makeParts, type Parts } from "./parts.ts";
import { faultWords } from "./refusal.ts";
import { switchShade, watchShade } from "./shade.ts";

const NARROW = 708; // px: as in the style sheet

export class Sheet {
  readonly #store: Store;
  readonly #engine: Engine;
  readonly #parts: Parts;
  readonly #drawing: Drawing;
  readonly #opening: Opening;
  readonly #clock = new Clock();
  readonly #followed: Followed | undefined;
  /** Numbers of the last question, and of the one whose answer is drawn. */
  #turn = 0;
  #drawnTurn = 0;
  #plottedWidth = 0;
  /** What the address asked for and was left out, in words; until something else is done. */
  #leftOut: readonly string[] = [];
  /** What was drawn last, to go back to. */
  #good: Held | undefined;

  constructor(page: HTMLElement) {
    const start = readAddress(location.hash);
    this.#followed = followed({
      changed: () => this.#opening.begin(),
      lost: (why) => this.#opening.lost([`${why}; the sheet keeps what it showed last`]),
      say: (words) => this.#parts.title.say(words),
    });
    this.#store = createStore({ ...start, beginning: this.#begun(start.beginning) });
    this.#parts = makeParts(
      page,
      {
        change: (changes, holding) => this.#store.set(changes, holding),
        settle: () => this.#store.settle(),
        isBehind: () => this.#drawnTurn < this.#turn,
        refuse: (path, why) => this.#parts.refusal.ofValue(path, why),
      },
      this.#deeds(),
    );
    this.#drawing = new Drawing(this.#parts, this.#clock);
    this.#engine = startEngine(
      (answer) => this.#hear(answer),
      () => new SheetWorker(),
    );
    this.#opening = new Opening({
      store: this.#store,
      engine: this.#engine,
      followed: this.#followed,
      refusal: this.#parts.refusal,
      ask: () => this.#ask(),
      goBack: (words) => this.#good && this.#goBackTo(this.#good, words),
    });
    this.#tellOfAddress(start);
    this.#store.onChange((what, holding) => {
      this.#drawing.isHeld = holding;
      this.#leftOut = [];
      this.#parts.refusal.ofDeed([]);
      if (what === "beginning") this.begin();
      else this.#ask();
    });
    this.#watch(page);
  }

  begin(): void {
    const { beginning } = this.#store.now();
    this.#parts.desk.mark(beginning.kind === "example" ? beginning.name : undefined);
    this.#opening.begin();
  }

  readonly #offered = () => ({ examples: Object.keys(EXAMPLES), follows: this.#followed !== undefined });
  readonly #begun = (asked: Beginning | undefined) => firstBeginning(asked, this.#offered());

  #tellOfAddress(read: Addressed) {
    this.#leftOut = leftOutOf(read, this.#offered());
    this.#parts.refusal.ofDeed(this.#leftOut);
  }

  #deeds() {
    return {
      begin: (name: string) => this.#store.begin({ kind: "example", name }),
      openFile: (file: File) => this.#open(file),
      save: () => this.#telling(async () => saveText(this.#opening.fileName, await this.#textNow())),
      writeBack: () => this.#telling(() => this.#writeBack()),
      text: () => this.#textNow(),
      name: () => this.#drawing.plane?.design.name ?? "plane",
      undo: () => void this.#store.undo(),
      redo: () => void this.#store.redo(),
      measure: () => {
        const on = this.#parts.measure.toggle();
        this.#parts.desk.measuring.setAttribute("aria-pressed", String(on));
      },
      shade: switchShade,
      mend: (cure: readonly { parameter: string; value: number | string }[]) =>
        this.#store.set(cure.map(({ parameter, value }) => [parameter, value] as const)),
      goTo: this.#goTo,
    };
  }

  readonly #goTo = (stage: Parameters<Store["setStage"]>[0]) => this.#store.setStage(stage);

  #watch(page: HTMLElement) {
    const drawing = this.#drawing;
    watchForHints(page, { figures: () => drawing.figures, plane: () => drawing.plane });
    watchKeys({ ...this.#deeds() });
    watchShade(() => this.#parts.body.recolour());
    dropFiles(page, (file) => this.#open(file));
    new ResizeObserver(() => {
      drawing.redraw();
      if (drawing.plane && this.#plotWidth() !== this.#plottedWidth) this.#ask();
    }).observe(this.#parts.sheet);
    addEventListener("beforeprint", () => drawing.fitTo(true));
    addEventListener("afterprint", () => drawing.fitTo(false));
    addEventListener("hashchange", () => {
      const read = readAddress(location.hash);
      this.#store.begin(this.#begun(read.beginning), read.changes, read.stage);
      this.#tellOfAddress(read);
    });
  }

  /** A file that cannot be read (a folder, or one that is gone) is told, and the sheet stays as it is. */
  async #open(file: File) {
    let read: OpenedFile;
    try {
      read = await readFile(file);
    } catch {
      return this.#parts.refusal.ofDeed([`${file.name}: cannot be read; is it a file, and still there?`]);
    }
    this.#store.begin({ kind: "text", ...read });
  }

  #ask() {
    const { changes, beginning } = this.#store.now();
    this.#parts.desk.follow(beginning.kind === "followed" ? this.#followed?.name : undefined, changes.size > 0);
    this.#plottedWidth = this.#plotWidth();
    this.#turn = this.#engine.show(this.#question(), this.#plottedWidth);
    this.#clock.asked(this.#turn);
  }

  #question() {
    const { changes, stage } = this.#store.now();
    return { base: this.#opening.base, changes: [...changes], stage };
  }

  /** A plot keeps its letters and gives up room where the sheet is a phone's. */
  #plotWidth(): number {
    return this.#parts.sheet.clientWidth < NARROW ? 100 : PLOT_SIZE.width; // mm
  }

  /** Nothing that was refused is kept: the sheet goes back to what it can draw, and tells why. A followed file is waited for. */
  #refused({ base, turn, faults }: Extract<Answer, { kind: "refused" }>) {
    if (base !== this.#opening.base || (turn > 0 && turn !== this.#turn)) return;
    const { beginning, changes } = this.#store.now();
    const words = faultWords(faults);
    if (turn === 0 && beginning.kind === "followed") return this.#opening.refused(words);
    const sound = new Map([...changes].filter(([path]) => !faults.some((fault) => fault.path === path)));
    if (turn > 0 && sound.size < changes.size) this.#goBackTo({ beginning, changes: sound }, words);
    else this.#goBackTo(this.#good ?? { beginning: this.#begun(undefined), changes: new Map() }, words);
  }

  #goBackTo({ beginning, changes }: Pick<Held, "beginning" | "changes">, words: readonly string[]) {
    const leftOut = this.#leftOut;
    this.#store.retract(beginning, changes);
    this.#leftOut = leftOut;
    this.#parts.refusal.ofDeed([...leftOut, ...words]);
  }

  #hear(answer: Answer) {
    const { body, plots, title } = this.#parts;
    const drawing = this.#drawing;
    if (answer.kind === "ready") drawing.know(answer.figures);
    else if (answer.kind === "plane") {
      this.#drawnTurn = answer.turn;
      const held = this.#store.now();
      if (answer.turn === this.#turn && this.#opening.isOf(held.beginning)) this.#good = held;
      drawing.drawPlane(answer.plane, answer.turn);
    } else if (answer.kind === "words") drawing.tell(answer.words, this.#store.now().stage, answer.turn);
    else if (answer.kind === "solid") drawing.drawSolid(answer);
    else if (answer.kind === "no-solid")
      body.tell("No body can be made of this design; the notes say what stands in the way.");
    else if (answer.kind === "refused") this.#refused(answer);
    else if (answer.kind === "opened") this.#opening.opened(answer.base);
    else if (answer.kind === "bug")
      title.say(`lamplane has a bug; please report it with the design: ${answer.message}`);
    // Cures and plots come late: what was asked before the last change is no longer so.
    else if (answer.kind === "cures" && answer.turn === this.#turn) drawing.addCures(answer.findings);
    else if (answer.kind === "plots" && answer.turn === this.#turn) plots.show(answer.plots);
  }

  /** The design file as it stands now, every change written into it, its comments kept. */
  readonly #textNow = (): Promise<string> => this.#engine.text(this.#question());

  async #writeBack() {
    if (this.#opening.fileIsRefused)
      return this.#parts.title.say("Nothing was written: the file is not as it was read; mend it first.");
    const written = this.#store.now().changes;
    const isWritten = await this.#followed?.writeBack(this.#textNow);
    const { beginning, changes } = this.#store.now();
    if (!isWritten || beginning.kind !== "followed") return;
    const since = [...changes].filter(([path, value]) => !(written.has(path) && written.get(path) === value));
    this.#store.begin({ kind: "followed" }, since);
  }

  async #telling(act: () => Promise<void>) {
    try {
      await act();
    } catch (error) {
      this.#parts.title.say(error instanceof Error ? error.message : String(error));
    }
  }
}
