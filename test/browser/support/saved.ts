import { readFileSync } from 'node:fs';
import type { Rig } from '../../../src/solver/document/rig.ts';
import type { Page } from './test.ts';
import { button, savedFile } from './workbench.ts';

/** What "Save to a file" gives now. */
export async function savedAnswer(page: Page): Promise<{ rig: Rig; made: string }> {
  const { path } = await savedFile(page, () => button(page, 'Save to a file').click());
  return JSON.parse(readFileSync(path, 'utf8'));
}
