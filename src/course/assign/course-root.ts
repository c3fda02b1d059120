/** The address of a file of the course; the course may stand in any folder of its host. */
export function courseAddress(path: string): string {
  const root = new URL(document.documentElement.dataset.root ?? '/', document.baseURI);
  return new URL(path, root).href;
}

/** JSON from a file of the course. Rejects where it cannot be had. */
export async function fetchJson<T>(path: string): Promise<T> {
  const response = await fetch(courseAddress(path));
  if (!response.ok) throw new Error(`the server answered ${response.status}`);
  return (await response.json()) as T;
}
