// The sheet as a whole: the way of a change from the hand through the worker to every drawing. Each redraw is timed.
import { PLOT_SIZE } from "@lamplane/parameters/pictures";
import type { Answer, FigureWords, SheetPlane, SheetWords } from "../protocol.ts";
import { type Beginning, readAddress } from "../state/address.ts";
import { type Engine, startEngine } from "../state/engine.ts";
import { EXAMPLES, FIRST_EXAMPLE } from "../state/examples.ts";
import type { Style } from "../state/format.ts";
import { createStore, type Store } from "../state/store.ts";
import { Clock } from "./clock.ts";
import { dropFiles, type OpenedFile, readFile, saveText } from "./files.ts";
import { type Followed, followed } from "./followed.ts";
import { watchForHints } from "./hint.ts";
import { watchKeys } from "./keys.ts";
import { makeParts, type Parts } from "./parts.ts";
import { switchShade, watchShade } from "./shade.ts";

const NARROW = 708; // px: as in the style sheet

export class Sheet {
  readonly #store: Store;
  readonly #engine: Engine;
  readonly #parts: Parts;
  readonly #clock = new Clock();
  readonly #followed: Followed | undefined;
  #figures: Readonly<Record<string, FigureWords>> = {};
  #plane: SheetPlane | undefined;
  #holding = false;
  #base = 0;
  #askedTurn = 0;
  #drawnTurn = 0;
  #plottedWidth = 0;
  readonly #texts = new Map<number, (text: string) => void>();

  constructor(page: HTMLElement) {
    const start = readAddress(location.hash);
    this.#followed = followed({
      changed: () => this.#openBeginning(),
      say: (words) => this.#parts.title.say(words),
    });
    this.#store = createStore({ ...start, beginning: this.#firstBeginning(start.beginning) });
    this.#parts = makeParts(
      page,
      {
        change: (changes, holding) => this.#store.set(changes, holding),
        settle: () => this.#store.settle(),
        isBehind: () => this.#drawnTurn < this.#askedTurn,
        refuse: (path, why) => this.#parts.refusal.ofValue(path, why),
      },
      this.#deeds(),
    );
    this.#engine = startEngine((answer) => this.#hear(answer));
    this.#store.onChange((what, holding) => {
      this.#holding = holding;
      if (what === "beginning") this.#openBeginning();
      else this.#ask();
    });
    this.#watch(page);
  }

  begin(): void {
    this.#openBeginning();
  }

  #firstBeginning(asked: Beginning | undefined): Beginning {
    if (asked?.kind === "text") return asked;
    if (asked?.kind === "example" && EXAMPLES[asked.name] !== undefined) return asked;
    return this.#followed ? { kind: "followed" } : { kind: "example", name: FIRST_EXAMPLE };
  }

  #deeds() {
    return {
      begin: (name: string) => this.#store.begin({ kind: "example", name }),
      openFile: async (file: File) => this.#opened(await readFile(file)),
      save: () => void this.#save(),
      writeBack: () => void this.#writeBack(),
      text: () => this.#textNow(),
      name: () => this.#plane?.design.name ?? "plane",
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
    watchForHints(page, { figures: () => this.#figures, plane: () => this.#plane });
    watchKeys({ ...this.#deeds() });
    watchShade(() => this.#parts.body.recolour());
    dropFiles(page, (file) => this.#opened(file));
    this.#parts.notes.element.querySelector(".note-scroll")?.addEventListener("scroll", () => this.#drawLeaders());
    new ResizeObserver(() => {
      this.#redraw();
      if (this.#plane && this.#plotWidth() !== this.#plottedWidth) this.#ask();
    }).observe(this.#parts.sheet);
    addEventListener("beforeprint", () => this.#fitTo(true));
    addEventListener("afterprint", () => this.#fitTo(false));
    addEventListener("hashchange", () => {
      const { beginning, changes, stage } = readAddress(location.hash);
      this.#store.begin(this.#firstBeginning(beginning), changes, stage);
    });
  }

  /** Everything is fitted to the printed page before it is taken, and to the screen again after it. */
  #fitTo(printing: boolean) {
    const { fields, body, sheet } = this.#parts;
    sheet.parentElement!.classList.toggle("is-printing", printing);
    for (const field of Object.values(fields)) field.measure();
    this.#redraw();
    body.refit();
  }

  #opened({ name, text }: OpenedFile) {
    this.#store.begin({ kind: "text", name, text });
  }

  async #openBeginning() {
    const { beginning } = this.#store.now();
    this.#base += 1;
    const base = this.#base;
    this.#parts.desk.mark(beginning.kind === "example" ? beginning.name : undefined);
    const text =
      beginning.kind === "text"
        ? beginning.text
        : beginning.kind === "example"
          ? EXAMPLES[beginning.name]!
          : await this.#followed!.text();
    if (base !== this.#base) return;
    this.#engine.open(base, text, this.#fileName());
    this.#ask();
  }

  #fileName(): string {
    const { beginning } = this.#store.now();
    if (beginning.kind === "followed") return this.#followed!.name;
    return beginning.kind === "example" ? `${beginning.name}.yaml` : beginning.name;
  }

  #ask() {
    const { changes, stage, beginning } = this.#store.now();
    this.#parts.desk.follow(beginning.kind === "followed" ? this.#followed?.name : undefined, changes.size > 0);
    this.#plottedWidth = this.#plotWidth();
    this.#askedTurn = this.#engine.show({ base: this.#base, changes: [...changes], stage }, this.#plottedWidth);
    this.#clock.asked(this.#askedTurn);
  }

  /** A plot keeps its letters and gives up room where the sheet is a phone's. */
  #plotWidth(): number {
    return this.#parts.sheet.clientWidth < NARROW ? 100 : PLOT_SIZE.width; // mm
  }

  #hear(answer: Answer) {
    const { body, notes, plots, refusal, title } = this.#parts;
    if (answer.kind === "ready") this.#figures = answer.figures;
    else if (answer.kind === "plane") this.#drawPlane(answer.plane, answer.turn);
    else if (answer.kind === "words") this.#tell(answer.words, answer.turn);
    else if (answer.kind === "solid") this.#drawSolid(answer);
    else if (answer.kind === "no-solid")
      body.tell("No body can be made of this design; the notes say what stands in the way.");
    else if (answer.kind === "cures") {
      if (this.#plane) notes.addCures(answer.findings, styleOf(this.#plane));
      this.#drawLeaders();
    } else if (answer.kind === "plots") plots.show(answer.plots);
    else if (answer.kind === "refused") refusal.ofDesign(answer.faults);
    else if (answer.kind === "written") {
      this.#texts.get(answer.turn)?.(answer.text);
      this.#texts.delete(answer.turn);
    } else if (answer.kind === "bug")
      title.say(`lamplane has a bug; please report it with the design: ${answer.message}`);
  }

  #drawPlane(plane: SheetPlane, turn: number) {
    this.#plane = plane;
    this.#drawnTurn = turn;
    this.#parts.refusal.ofDesign([]);
    this.#drawViews();
    this.#parts.measure.show(plane);
    void this.#parts.sheet.offsetHeight; // laid out now, so that the time told holds all of it
    this.#clock.drew("elevation", turn);
  }

  /** What stands beside the drawing, as soon as it is known. */
  #tell(words: SheetWords, turn: number) {
    const { notes, schedule, steps, title, fields } = this.#parts;
    const plane = this.#plane!;
    notes.show(words, this.#holding);
    schedule.show(plane);
    steps.show(words, plane, this.#store.now().stage, this.#figures);
    title.show(plane, fields.elevation.scale()?.perMm);
    this.#drawLeaders();
    document.title = `${plane.design.name} · lamplane`;
    this.#clock.drew("words", turn);
  }

  #drawSolid({ parts, about, turn }: Extract<Answer, { kind: "solid" }>) {
    this.#parts.body.show(parts, about);
    this.#parts.body.drawNow();
    this.#clock.drew("solid", turn);
  }

  #redraw() {
    this.#drawViews();
    if (this.#plane) this.#parts.measure.show(this.#plane);
    this.#drawLeaders();
  }

  #drawViews() {
    const { fields } = this.#parts;
    if (!this.#plane) return;
    for (const view of this.#plane.views) fields[view.name].draw(view, this.#plane, this.#holding);
  }

  #drawLeaders() {
    const { leaders, notes, fields } = this.#parts;
    const places = this.#plane?.places;
    if (!places || !fields.elevation.scale()) return;
    if (notes.shown().length === 0) return leaders.clear();
    const frame = fields.elevation.overlay.ownerSVGElement!.getBoundingClientRect();
    leaders.draw(notes.shown(), (place) => {
      const spot = places[place];
      if (!spot) return undefined;
      const { x, y } = fields.elevation.pixelsOf(spot);
      return { x: frame.left + x, y: frame.top + y };
    });
  }

  /** The design file as it stands now, every change written into it, its comments kept. */
  #textNow(): Promise<string> {
    const { changes, stage } = this.#store.now();
    const turn = this.#engine.nextTurn();
    return new Promise((resolve) => {
      this.#texts.set(turn, resolve);
      this.#engine.fetch({ kind: "written", turn, base: this.#base, changes: [...changes], stage });
    });
  }

  async #save() {
    saveText(this.#fileName(), await this.#textNow());
  }

  async #writeBack() {
    if (await this.#followed?.writeBack(await this.#textNow())) this.#store.begin({ kind: "followed" });
  }
}

const styleOf = ({ design }: SheetPlane): Style => ({
  units: design.units,
  smallestFraction: design.shop.smallestFraction,
});
