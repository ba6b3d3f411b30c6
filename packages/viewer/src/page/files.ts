// Design files that come into the page: opened by button or by drag.
import { LARGEST_FILE } from "@lamplane/parameters/design";

export interface OpenedFile {
  readonly name: string;
  readonly text: string;
}

/** A file's text; one that is too large to be a design is read as far as that shows. @throws where it cannot be read */
export const readFile = async (file: File): Promise<OpenedFile> => ({
  name: file.name,
  text: await file.slice(0, LARGEST_FILE + 1).text(),
});

/** Files dropped anywhere on the page are opened, all together. */
export function dropFiles(page: HTMLElement, open: (files: readonly File[]) => void): void {
  page.addEventListener("dragover", (event) => {
    event.preventDefault();
    page.classList.add("is-dropped-on");
  });
  page.addEventListener("dragleave", ({ relatedTarget }) => {
    if (relatedTarget === null) page.classList.remove("is-dropped-on");
  });
  page.addEventListener("drop", (event) => {
    event.preventDefault();
    page.classList.remove("is-dropped-on");
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length > 0) open(files);
  });
}
