import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** A folder that stands while a file of tests runs; `put` writes a document into it and gives its path. */
export function temporaryFolder() {
  const path = mkdtempSync(join(tmpdir(), 'counterpose-cli-'));
  afterAll(() => rmSync(path, { recursive: true, force: true }));
  const put = (name: string, content: unknown): string => {
    const bytes = typeof content === 'string' || content instanceof Uint8Array ? content : JSON.stringify(content);
    const file = join(path, name);
    writeFileSync(file, bytes);
    return file;
  };
  return { path, put };
}
