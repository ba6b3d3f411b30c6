// Where a page stands that others can open: this one, or the one that the maker has entered, which the browser keeps.
import { isServedByView } from "../served-by-view.ts";

const KEY = "lamplane-page";

/** This page's address without what stands after #; undefined where nobody else can open it. */
export function ownPage(): string | undefined {
  if (isServedByView() || !/^https?:$/.test(location.protocol)) return undefined;
  return location.href.replace(/#.*$/s, "");
}

/** The address that was entered last. */
export function pageAddress(): string | undefined {
  try {
    return localStorage.getItem(KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps an address, or none where it is empty. @returns it as a page's address; undefined where it is none */
export function keepPage(typed: string): string | undefined {
  const page = parsePage(typed.trim());
  try {
    if (page === undefined) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, page);
  } catch {
    // A browser that keeps nothing: the address lasts as long as the page.
  }
  return page;
}

function parsePage(text: string): string | undefined {
  try {
    const { protocol, href } = new URL(text);
    return /^https?:$/.test(protocol) ? href.replace(/#.*$/s, "") : undefined;
  } catch {
    return undefined;
  }
}
