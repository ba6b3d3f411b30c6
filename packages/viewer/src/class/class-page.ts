// The class screen: a roster's planes as small drawings with their state, shared set-ups, boards, and the class sheet.
import { html } from "../elements.ts";
import { dropFiles, readFile } from "../page/files.ts";
import { restoreTheme, switchTheme } from "../page/theme.ts";
import type { ClassFileName, ClassText, ClassView } from "../protocol/class-view.ts";
import { saveBlob } from "../save-file.ts";
import { isClassAddress } from "../state/address.ts";
import { type ClassClient, createClassClient } from "../state/class-client.ts";
import { keepClass, keptClass, withFiles } from "../state/kept-class.ts";
import { isRoster } from "../state/roster-text.ts";
import { followClass } from "../state/served-class.ts";
import { CLASS } from "../words/class.ts";
import { planeCard } from "./plane-card.ts";

const FILES: readonly ClassFileName[] = ["class.pdf", "class.csv", "class-sheets.zip"];
const TYPES = { pdf: "application/pdf", csv: "text/csv", zip: "application/zip" } as const;

export class ClassPage {
  readonly #client: ClassClient = createClassClient();
  readonly #name = html("h1", {}, CLASS.title);
  readonly #status = html("p", { class: "class-status", role: "status" });
  readonly #faults = html("section", { class: "faults", role: "alert", "aria-label": CLASS.faults, hidden: true });
  readonly #body = html("div", { class: "class-body" });
  #files: readonly ClassText[] = keptClass()?.files ?? [];
  /** How many core widths; the fewest where undefined. */
  #groups: number | undefined = keptClass()?.groups;
  /** Whether the files are those that `lamplane view` follows. */
  #isFollowed = false;
  /** Of the files that are shown: an answer about others comes too late. */
  #shown = 0;

  constructor(page: HTMLElement) {
    restoreTheme();
    document.documentElement.classList.add("is-class");
    page.append(
      html(
        "header",
        { class: "toolbar" },
        this.#name,
        html(
          "div",
          { class: "toolbar-actions" },
          filePicker("open-roster", CLASS.open, "", (files) => void this.#open(files)),
          filePicker("add-files", CLASS.add, CLASS.addHelp, (files) => void this.#open(files)),
          commandButton(CLASS.sheet, () => leaveClass(), CLASS.sheetHelp),
          commandButton(CLASS.theme, switchTheme),
        ),
      ),
      html("main", { class: "class sheet" }, this.#faults, this.#status, this.#body),
    );
    dropFiles(page, (files) => void this.#open(files));
    addEventListener("hashchange", () => {
      if (isClassAddress(location.hash)) return;
      scrollTo(0, 0); // the next page begins at its top
      location.reload();
    });
  }

  async begin(): Promise<void> {
    await followClass(
      (files) => {
        this.#files = files;
        this.#isFollowed = true;
        void this.#show();
      },
      (words) => this.#showFaults([words]),
    );
    await this.#show();
  }

  /** A roster begins another class, with what is opened together with it; other files are put beside those of this one. */
  async #open(files: readonly File[]): Promise<void> {
    let read: ClassText[];
    try {
      read = await Promise.all(files.map(readFile));
    } catch {
      return this.#showFaults([CLASS.unreadable]);
    }
    this.#isFollowed = false;
    if (read.some(isRoster)) this.#groups = undefined;
    this.#files = read.some(isRoster)
      ? withFiles(
          this.#files.filter((file) => !isRoster(file)),
          read,
        )
      : withFiles(this.#files, read);
    await this.#show();
  }

  async #show(): Promise<void> {
    this.#shown += 1;
    const shown = this.#shown;
    if (this.#files.length === 0) return this.#body.replaceChildren(...invitation());
    this.#status.textContent = CLASS.working;
    try {
      const view = await this.#client.view(this.#files, this.#groups);
      if (shown === this.#shown) this.#draw(view);
    } catch (error) {
      this.#showFaults([(error as Error).message]);
    }
  }

  #showFaults(words: readonly string[]): void {
    this.#status.textContent = "";
    this.#faults.hidden = words.length === 0;
    this.#faults.replaceChildren(html("ul", {}, ...words.map((each) => html("li", {}, each))));
  }

  #draw(view: ClassView): void {
    this.#showFaults(view.faults);
    if (view.faults.length > 0) {
      this.#body.replaceChildren(...invitation());
      return;
    }
    this.#name.textContent = view.name;
    document.title = `${view.name} · lamplane`;
    this.#status.textContent = view.heading;
    const planes = view.planes.flatMap(({ plane }) => plane?.file.name ?? []);
    if (!keepClass(this.#files, planes, this.#groups)) this.#showFaults([CLASS.notKept]);
    this.#body.replaceChildren(
      html(
        "div",
        { class: "class-about" },
        this.#setupsSection(view),
        ...(view.boards.length > 0 ? [linesSection(CLASS.boards, view.boards)] : []),
        ...(view.sheets.length > 0 ? [linesSection(CLASS.sheets, view.sheets)] : []),
        this.#filesSection(view),
      ),
      html("h2", {}, CLASS.planes),
      html("ol", { class: "class-planes" }, ...view.planes.map((card) => planeCard(card, this.#isFollowed))),
    );
  }

  /** The numbers that the class shares, with a choice of how many core widths. */
  #setupsSection({ setups, coreWidths: { fewest, most } }: ClassView): HTMLElement {
    const section = linesSection(CLASS.setups, setups);
    if (fewest === 0 || fewest === most) return section;
    const counts = Array.from({ length: most - fewest + 1 }, (_, i) => fewest + i);
    const choice = html(
      "select",
      { id: "core-widths" },
      ...counts.map((count) => html("option", { value: String(count) }, CLASS.coreWidths({ count, fewest }))),
    );
    choice.value = String(Math.min(most, Math.max(fewest, this.#groups ?? fewest)));
    choice.addEventListener("change", () => {
      const count = Number(choice.value);
      this.#groups = count === fewest ? undefined : count;
      void this.#show();
    });
    section.append(
      html("label", { for: "core-widths", title: CLASS.coreWidthsHelp }, CLASS.coreWidthsLabel, " ", choice),
    );
    return section;
  }

  #filesSection({ planes, sheets }: ClassView): HTMLElement {
    const status = html("p", { role: "status" });
    const files = FILES.filter((file) => file !== "class-sheets.zip" || sheets.length > 0);
    const buttons = files.map((file) => commandButton(file, () => void this.#save(file, status)));
    const hasPlanes = planes.some(({ plane }) => plane);
    for (const button of buttons) button.disabled = !hasPlanes;
    return html(
      "section",
      { class: "class-files" },
      html("h2", {}, CLASS.files),
      html("p", {}, CLASS.filesHelp),
      ...(sheets.length > 0 ? [html("p", {}, CLASS.sheetsHelp)] : []),
      html("p", { class: "class-file-buttons" }, ...buttons),
      status,
    );
  }

  async #save(file: ClassFileName, status: HTMLElement): Promise<void> {
    status.textContent = CLASS.making;
    try {
      const bytes = await this.#client.file(this.#files, file, this.#groups);
      saveBlob(file, new Blob([bytes], { type: TYPES[file.slice(-3) as keyof typeof TYPES] }));
      status.textContent = "";
    } catch (error) {
      status.textContent = (error as Error).message;
    }
  }
}

const linesSection = (title: string, lines: readonly string[]): HTMLElement =>
  html("section", {}, html("h2", {}, title), html("ul", {}, ...lines.map((line) => html("li", {}, line))));

const invitation = (): HTMLElement[] => [html("p", {}, CLASS.intro), html("p", {}, CLASS.drop)];

function leaveClass(): void {
  location.hash = "";
  location.reload();
}

function commandButton(words: string, act: () => void, title?: string): HTMLButtonElement {
  const button = html("button", { type: "button", title }, words);
  button.addEventListener("click", act);
  return button;
}

function filePicker(id: string, words: string, title: string, open: (files: readonly File[]) => void): HTMLElement {
  const picker = html("input", { type: "file", multiple: true, accept: ".csv,.tsv,.yaml,.yml,.json", id });
  picker.addEventListener("change", () => {
    const files = [...(picker.files ?? [])];
    if (files.length > 0) open(files);
    picker.value = "";
  });
  return html("label", { for: id, class: "open-file", title: title === "" ? undefined : title }, words, picker);
}
