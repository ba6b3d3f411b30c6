// The address bar, which holds the state of the page.

/** A page in a frame without rights may keep no address: it works all the same. */
export function setAddressBar(address: string): void {
  try {
    history.replaceState(null, "", address);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}
