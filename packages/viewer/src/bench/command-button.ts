// A button that a gloved hand finds.
import { html } from "../elements.ts";

export function commandButton(words: string, act: () => void, kind?: string): HTMLButtonElement {
  const button = html("button", { type: "button", class: kind }, words);
  button.addEventListener("click", act);
  return button;
}
