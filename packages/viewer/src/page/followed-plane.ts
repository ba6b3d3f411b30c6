// A plane of the class that `lamplane view` follows: its design as the class makes it, and the way back into its row and its own file.

import type { ClassText, ClassView } from "../protocol/class-view.ts";
import type { ParameterChange } from "../protocol/sheet-data.ts";
import { keepClass, keptClass } from "../state/kept-class.ts";
import { classToken, fetchClass, servedRoster } from "../state/served-class.ts";
import { CLASS } from "../words/class.ts";
import { FOLLOWED } from "../words/page.ts";
import { watchFollowed } from "./followed-changes.ts";
import type { FollowedFile, FollowHandlers } from "./followed-file.ts";

/** What a class shares, so that a plane's own wish may give way. */
const SHARED = "body.sideClearance";

type Versions = readonly (readonly [name: string, version: string])[];

const versionsOf = (files: readonly ClassText[]): Versions => files.map(({ name, version = "" }) => [name, version]);

/** A plane's design as it was read, and the class's files that made it. */
interface PlaneSource {
  readonly versions: Versions;
  readonly text: string;
}

interface ClassReader {
  /** The class that some files make. */
  view(files: readonly ClassText[], groups?: number): Promise<ClassView>;
}

/** @param name of the plane's file */
export function followPlane(
  name: string,
  { changed, lost, say }: FollowHandlers,
  classReader: ClassReader,
): FollowedFile {
  const roster = servedRoster()!;
  const plane = name.replace(/\.yaml$/, "");
  /** What the sheet shows; undefined before, and while it cannot be had. */
  let read: PlaneSource | undefined;
  /** Of the files that were fetched last. */
  let fetched: Versions | undefined;
  let requestId = 0;

  const gone = (why: string): undefined => {
    read = undefined;
    fetched = undefined;
    lost(why);
  };

  const noteChange = async () => {
    const now = await fetchClass();
    if (!now || ("files" in now && JSON.stringify(versionsOf(now.files)) === JSON.stringify(fetched))) return;
    say(CLASS.changed);
    changed();
  };
  watchFollowed({ changed: noteChange }, { changed, say });

  return {
    name,
    writeBackHelp: CLASS.writeBackHelp({ roster, file: name }),
    async text() {
      const ownId = ++requestId;
      const now = await fetchClass();
      if (!now || ownId !== requestId) return undefined; // only the newest request is answered
      if ("lost" in now) return gone(now.lost);
      const versions = versionsOf(now.files);
      fetched = versions;
      const groups = keptClass()?.groups;
      const view = await classReader.view(now.files, groups);
      if (ownId !== requestId) return undefined;
      const found = planeIn(view, name);
      if ("why" in found) return gone(found.why ?? CLASS.noPlane({ roster, plane }));
      keepClass(now.files, fileNamesOf(view), groups);
      const { file, shop } = found;
      read = { versions, text: file.text };
      return { text: file.text, ...(shop ? { shop: { file: shop.name, source: shop.text } } : {}) };
    },
    async writeBack({ changes }) {
      const response = read && (await putPlane(plane, changes, read));
      if (!response?.ok) {
        say(!read ? FOLLOWED.unreadable : response ? await response.text() : FOLLOWED.notWritten);
        return false;
      }
      const files = (await response.json()) as string[];
      say(CLASS.written({ files, roster, isShared: changes.some(([path]) => path === SHARED) }));
      return true;
    },
  };
}

/** @param read what is written over, and no other */
function putPlane(plane: string, changes: readonly ParameterChange[], { text, versions }: PlaneSource) {
  const body = { plane, changes: changes.map(([path, to]) => [path, to ?? null]), text, read: versions };
  return fetch("./followed/plane", {
    method: "PUT",
    body: JSON.stringify(body),
    headers: { "content-type": "application/json", "x-lamplane-token": classToken() },
  }).catch(() => undefined);
}

const fileNamesOf = ({ planes }: ClassView): string[] => planes.flatMap(({ plane }) => plane?.file.name ?? []);

/** A plane of the class, or why it has none: the faults of its row; nothing where there is no row. */
function planeIn(view: ClassView, name: string): { file: ClassText; shop?: ClassText } | { why: string | undefined } {
  if (view.faults.length > 0) return { why: view.faults.join(" ") };
  const card = view.planes.find(({ plane }) => plane?.file.name === name);
  if (card?.plane) return card.plane;
  const faulty = view.planes.find((each) => !each.plane && `${each.name}.yaml` === name);
  return { why: faulty?.notes.join(" ") };
}
