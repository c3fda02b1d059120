/** Hands a document to the browser as a file to save. */
export function saveFile(name: string, document: unknown): void {
  saveContent(name, `${JSON.stringify(document, null, 1)}\n`, 'application/json');
}

/** The same for a text or bytes. */
export function saveContent(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const anchor = document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  // The browser takes it over in its own time.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
