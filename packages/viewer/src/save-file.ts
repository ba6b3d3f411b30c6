// Files out of the page, as downloads.

export const saveText = (name: string, text: string): void => saveBlob(name, new Blob([text], { type: "text/yaml" }));

export function saveBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000); // ms: the browser has begun to read it by then
}
