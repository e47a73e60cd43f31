// Hands a text to the reader as a file.

export function saveFile(name: string, text: string, mime: string): void {
  const address = URL.createObjectURL(new Blob([text], {type: mime}));
  const link = Object.assign(document.createElement("a"), {href: address, download: name});
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
