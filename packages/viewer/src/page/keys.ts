// Keys that work wherever the cursor is, but never while something is typed.

export interface KeyActions {
  undo(): void;
  redo(): void;
  save(): void;
  measure(): void;
}

export function watchKeys({ undo, redo, save, measure }: KeyActions): void {
  document.addEventListener("keydown", (event) => {
    const key = event.key.toLowerCase();
    const isCommand = event.ctrlKey || event.metaKey;
    const isTyping = (event.target as Element).matches?.("input[type=text], textarea, select");
    const act =
      isCommand && key === "s"
        ? save
        : isCommand && (key === "y" || (key === "z" && event.shiftKey))
          ? redo
          : isCommand && key === "z"
            ? undo
            : !isCommand && !isTyping && key === "m"
              ? measure
              : undefined;
    if (!act) return;
    event.preventDefault();
    act();
  });
}
