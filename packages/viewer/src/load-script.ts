// Scripts that the first picture does not wait for: plain scripts, since a page from a folder may load no module.
import { FILES } from "./words/page.ts";

const loading = new Map<string, Promise<void>>();

/** Loads a script beside the page, once. @throws Error in words where it is missing; it may be asked for again */
export function loadScript(name: string): Promise<void> {
  return loadOnce(name, () => {
    const script = document.createElement("script");
    script.src = `./${name}`;
    return script;
  });
}

/** Loads a style sheet beside the page, once. @throws Error in words where it is missing; it may be asked for again */
export function loadStyle(name: string): Promise<void> {
  return loadOnce(name, () => {
    const link = document.createElement("link");
    link.rel = "stylesheet";
    link.href = `./${name}`;
    return link;
  });
}

function loadOnce(name: string, makeElement: () => HTMLElement): Promise<void> {
  const known = loading.get(name);
  if (known) return known;
  const loaded = new Promise<void>((resolve, reject) => {
    const element = makeElement();
    element.addEventListener("load", () => resolve());
    element.addEventListener("error", () => {
      loading.delete(name);
      reject(new Error(FILES.missingScript(name)));
    });
    document.head.append(element);
  });
  loading.set(name, loaded);
  return loaded;
}
