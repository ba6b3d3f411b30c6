// Word from `lamplane view` of what changed on disk, and whether it is still there to say so.
import { FOLLOWED } from "../words/page.ts";
import type { FollowHandlers } from "./followed-file.ts";

interface FollowedEvents {
  /** @param version of the file as it is now */
  changed(version: string): void | Promise<void>;
  lost?(why: string): void;
}

/** Where the server falls silent it is said once; when it is back, all is read anew, since no word came of what changed meanwhile. */
export function watchFollowed({ changed, lost }: FollowedEvents, on: Pick<FollowHandlers, "changed" | "say">): void {
  let isSilent = false;
  const events = new EventSource("./followed/changes");
  events.addEventListener("changed", ({ data }) => changed(data));
  events.addEventListener("lost", ({ data }) => lost?.(String(JSON.parse(data)).trim()));
  events.addEventListener("error", () => {
    if (!isSilent) on.say(FOLLOWED.silent);
    isSilent = true;
  });
  events.addEventListener("open", () => {
    if (isSilent) on.changed();
    isSilent = false;
  });
}
