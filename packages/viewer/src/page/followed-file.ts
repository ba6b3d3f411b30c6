// The file that `lamplane view` follows: its text, word that it changed on disk, and the way back into it, only when asked.

export interface FollowedFile {
  readonly name: string;
  /** @returns undefined where the file cannot be had; why is told through `lost` */
  text(): Promise<string | undefined>;
  /**
   * Writes over the file as it was read when this was asked, and over no other.
   * @param textOf makes the text from what was read
   * @returns whether the file now holds it
   */
  writeBack(textOf: () => Promise<string>): Promise<boolean>;
}

interface FollowHandlers {
  /** The file's text is another one now. */
  changed(): void;
  /** It cannot be had, for the moment or for good. */
  lost(why: string): void;
  say(words: string): void;
}

/** @returns undefined on a page that no `lamplane view` serves */
export function followFile({ changed, lost, say }: FollowHandlers): FollowedFile | undefined {
  const mark = document.querySelector<HTMLMetaElement>('meta[name="lamplane-follows"]');
  if (!mark) return undefined;
  const token = mark.dataset.token ?? "";
  let version: string | undefined; // as it was read last; undefined before, and while there is none
  let [asked, isGone] = [0, false];
  const words = new EventSource("./followed/changes");
  words.addEventListener("changed", ({ data }) => {
    if (data === version) return;
    say("The file changed on disk; the sheet follows it.");
    changed();
  });
  const gone = (why: string) => {
    version = undefined;
    lost(why);
  };
  words.addEventListener("lost", ({ data }) => {
    asked += 1; // what is being read now was there before
    gone(String(JSON.parse(data)).trim());
  });
  words.addEventListener("error", () => {
    if (!isGone) say("`lamplane view` does not answer; the sheet keeps what it has and follows on when it is back.");
    isGone = true;
  });
  words.addEventListener("open", () => {
    if (isGone) changed(); // what changed meanwhile was told to nobody
    isGone = false;
  });
  return {
    name: mark.content,
    async text() {
      const turn = ++asked;
      const answer = await fetch("./followed/design", { cache: "no-store" }).catch(() => undefined);
      if (!answer || turn !== asked) return undefined; // the newest question is answered
      const text = await answer.text();
      if (turn !== asked) return undefined;
      if (!answer.ok) gone(text.trim());
      else version = answer.headers.get("etag") ?? undefined;
      return answer.ok ? text : undefined;
    },
    async writeBack(textOf) {
      const read = version;
      const text = await textOf();
      const answer = await fetch("./followed/design", {
        method: "PUT",
        body: text,
        headers: { "content-type": "text/yaml", "x-lamplane-token": token, "if-match": read ?? "" },
      }).catch(() => undefined);
      if (!answer) {
        say("`lamplane view` does not answer; nothing was written.");
        return false;
      }
      version = answer.headers.get("etag") ?? version;
      say(answer.ok ? `${mark.content} now holds these figures; its comments are kept.` : await answer.text());
      return answer.ok;
    },
  };
}
