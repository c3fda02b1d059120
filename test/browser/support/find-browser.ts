import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { unpackChromium } from './unpack-chromium.ts';

export interface FoundBrowser {
  executablePath: string;
  /** What it needs in its environment besides what is there. */
  env: Record<string, string>;
}

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const ADVICE = 'install Chromium ("apt-get install chromium") or set COUNTERPOSE_BROWSER to the path of one';

/** Needed without a graphics card, as root, and on a machine that reaches nothing outside. */
export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * A Chromium that starts: COUNTERPOSE_BROWSER, or one on the PATH, or the one in the package @sparticuz/chromium,
 * unpacked into .browser/. Throws one sentence that says what to install where there is none.
 */
export async function findBrowser(): Promise<FoundBrowser> {
  const asked = process.env.COUNTERPOSE_BROWSER;
  if (asked) return startable(asked) ?? refuse(`COUNTERPOSE_BROWSER names ${asked}, which does not start: ${ADVICE}.`);
  for (const path of onPath(NAMES)) {
    const found = startable(path);
    if (found) return found;
  }
  const unpacked = await unpackChromium();
  return (
    startable(unpacked.executablePath, unpacked.fonts) ??
    startable(unpacked.executablePath, { ...unpacked.fonts, ...unpacked.libraries }) ??
    refuse(`No browser for the tests starts on this machine: ${ADVICE}.`)
  );
}

function onPath(names: string[]): string[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).filter(isExecutable);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function startable(executablePath: string, env: Record<string, string> = {}): FoundBrowser | undefined {
  const run = spawnSync(executablePath, ['--version'], { env: { ...process.env, ...env }, timeout: 20_000 });
  return run.status === 0 ? { executablePath, env } : undefined;
}

function refuse(sentence: string): never {
  throw new Error(sentence);
}
