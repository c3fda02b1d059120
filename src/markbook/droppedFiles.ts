import { collect } from '../delivery/collection/collect.ts';
import type { Collected, CollectedFile } from '../delivery/collection/collected.ts';

/** Files that were chosen or dropped, as a collection; each is only read when its turn comes. */
export function collectedFiles(files: readonly File[]): CollectedFile[] {
  const all = files.map((file) => ({
    path: pathOf(file),
    collected: new Date(file.lastModified).toISOString(),
    read: async () => new Uint8Array(await file.arrayBuffer()),
  }));
  return all.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** Within the chosen folder; that folder's own name is nobody's. */
function pathOf({ webkitRelativePath, name }: File): string {
  return webkitRelativePath === '' ? name : webkitRelativePath.slice(webkitRelativePath.indexOf('/') + 1);
}

/** What was dropped, folders gone through to the last file. */
export async function filesOfDrop(items: DataTransferItemList): Promise<File[]> {
  const entries = [...items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  return (await Promise.all(entries.map(filesOf))).flat();
}

async function filesOf(entry: FileSystemEntry): Promise<File[]> {
  if (entry.isFile) {
    const file = await new Promise<File>((done, failed) => (entry as FileSystemFileEntry).file(done, failed));
    // A dropped file does not know its folder; the mark book names files by it.
    Object.defineProperty(file, 'webkitRelativePath', { value: entry.fullPath.replace(/^\//, 'dropped/') });
    return [file];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const found: File[] = [];
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((done, failed) => reader.readEntries(done, failed));
    if (some.length === 0) return found;
    found.push(...(await Promise.all(some.map(filesOf))).flat());
  }
}

/** The text of one file of a collection, read once more; null where it is gone. */
export async function textAt(files: readonly CollectedFile[], path: string): Promise<string | null> {
  const holds = files.filter((file) => path === file.path || path.startsWith(`${file.path}/`));
  for await (const one of collect(holds)) if (one.kind === 'text' && one.path === path) return one.text;
  return null;
}

export type { Collected };
