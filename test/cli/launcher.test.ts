import { copyFileSync, linkSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { counterpose, NODE, start } from './command.ts';

/** Makes a Node that does not run TypeScript, as those before 22.18 do not. */
const OLD = ['--no-experimental-strip-types'];

let folder: string;
/** The project's Node under another path. */
let elsewhere: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpose-launcher-'));
  elsewhere = join(folder, 'node');
  try {
    linkSync(realpathSync(NODE), elsewhere);
  } catch {
    copyFileSync(realpathSync(NODE), elsewhere);
  }
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('an old Node', () => {
  test('hands over to the one that npm installed, from any folder', async () => {
    const here = await counterpose(['--help']);
    const there = await counterpose(['--help'], { node: elsewhere, nodeArgs: OLD, cwd: folder });
    expect(there).toEqual(here);
  });

  test('passes on the exit status and what is printed', async () => {
    const outcome = await counterpose(['salve'], { node: elsewhere, nodeArgs: OLD });
    expect(outcome).toEqual(await counterpose(['salve']));
    expect(outcome.status).toBe(2);
  });

  test('says what is needed where there is no other', async () => {
    const { status, stdout, stderr } = await counterpose(['--help'], { nodeArgs: OLD });
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^counterpose: found Node \d+\.\d+\.\d+, expected 22\.18 or newer; "npm ci" in .+\n$/);
  });

  test.each(['SIGTERM', 'SIGINT', 'SIGHUP'] as const)('passes on %s and ends by it', async (signal) => {
    const child = start(['grade', '-'], { node: elsewhere, nodeArgs: OLD });
    await new Promise((waited) => setTimeout(waited, 600));
    child.kill(signal);
    // 'close' comes when nobody holds the output any more: the Node behind has ended too.
    const ended = await new Promise((done) => child.on('close', (_status, by) => done(by)));
    expect(ended).toBe(signal);
  });
});
