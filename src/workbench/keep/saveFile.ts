/** Hands a document to the browser as a file to save. */
export function saveFile(name: string, document: unknown): void {
  const address = URL.createObjectURL(
    new Blob([`${JSON.stringify(document, null, 1)}\n`], { type: 'application/json' }),
  );
  const anchor = window.document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
