/** Hands a file to the person, to be saved wherever they like. */
export function save(name: string, content: string | Uint8Array<ArrayBuffer>, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser takes it over in its own time.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
