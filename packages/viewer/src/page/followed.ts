// The file that `lamplane view` follows: its text, word that it changed on disk, and the way back into it, only when asked.

export interface Followed {
  readonly name: string;
  text(): Promise<string>;
  /** @returns whether the file now holds the text */
  writeBack(text: string): Promise<boolean>;
}

interface Heard {
  /** The file's text is another one now. */
  changed(): void;
  say(words: string): void;
}

/** @returns undefined on a page that no `lamplane view` serves */
export function followed({ changed, say }: Heard): Followed | undefined {
  const mark = document.querySelector<HTMLMetaElement>('meta[name="lamplane-follows"]');
  if (!mark) return undefined;
  const token = mark.dataset.token ?? "";
  let version = "";
  const words = new EventSource("./followed/changes");
  words.addEventListener("changed", ({ data }) => {
    if (data === version) return;
    say("The file changed on disk; the sheet follows it.");
    changed();
  });
  return {
    name: mark.content,
    async text() {
      const answer = await fetch("./followed/design", { cache: "no-store" });
      version = answer.headers.get("etag") ?? "";
      return answer.ok ? answer.text() : "";
    },
    async writeBack(text) {
      const answer = await fetch("./followed/design", {
        method: "PUT",
        body: text,
        headers: { "content-type": "text/yaml", "x-lamplane-token": token, "if-match": version },
      });
      version = answer.headers.get("etag") ?? version;
      say(answer.ok ? `${mark.content} now holds these figures; its comments are kept.` : await answer.text());
      return answer.ok;
    },
  };
}
