// A document without a browser, for code that makes elements: linkedom's, with what it lacks of dialogs and text fields.
import { parseHTML } from "linkedom";
import { vi } from "vitest";

/** Puts a document in the place of the browser's until `vi.unstubAllGlobals()`. */
export function stubDocument(): Document {
  const { document, HTMLElement, Element, Event } = parseHTML("<!doctype html><html><head></head><body></body></html>");
  const { createElement } = document;
  document.createElement = (tag: string) => {
    const element = createElement.call(document, tag);
    if (tag === "dialog") makeDialog(element);
    if (tag === "input") makeTextField(element);
    return element;
  };
  for (const [name, value] of Object.entries({ document, HTMLElement, Element, Event, innerWidth: 400 }))
    vi.stubGlobal(name, value);
  return document;
}

function makeDialog(element: HTMLElement): void {
  Object.assign(element, {
    showModal: () => element.setAttribute("open", ""),
    close: () => element.dispatchEvent(new Event("close")),
  });
}

/** @see HTML, setRangeText(): the text between two places is replaced, the cursor stands behind it */
function makeTextField(element: HTMLElement): void {
  const field = element as HTMLInputElement;
  let value = "";
  Object.defineProperty(field, "value", {
    get: () => value,
    set: (text: string) => {
      value = text;
      [field.selectionStart, field.selectionEnd] = [text.length, text.length];
    },
  });
  Object.assign(field, {
    selectionStart: 0,
    selectionEnd: 0,
    focus: () => undefined,
    select: () => ([field.selectionStart, field.selectionEnd] = [0, value.length]),
    setRangeText(text: string, from: number, to: number) {
      value = value.slice(0, from) + text + value.slice(to);
      [field.selectionStart, field.selectionEnd] = [from + text.length, from + text.length];
    },
  });
}

export const press = (element: Element | null | undefined): void => {
  if (!element) throw new Error("nothing to press");
  element.dispatchEvent(new Event("click", { bubbles: true }));
};

/** Text as it is read, without space to spare. */
export const textOf = (element: Element): string => (element.textContent ?? "").replace(/\s+/g, " ").trim();
