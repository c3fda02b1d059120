import { existsSync, readFileSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface UnpackedChromium {
  executablePath: string;
  /** For a machine without fonts of its own: the environment that shows it ours. */
  fonts: Record<string, string>;
  /** For a machine that lacks libnss3 and its like: the environment that shows it ours. */
  libraries: Record<string, string>;
}

const ROOT = resolve(import.meta.dirname, '../../..');
const PACKAGE = '@sparticuz/chromium';

/** The Chromium of the package, unpacked into .browser/ on first use (about two seconds). */
export async function unpackChromium(): Promise<UnpackedChromium> {
  const bin = binFolder();
  const folder = join(ROOT, '.browser', `chromium-${versionOf(bin)}`);
  if (!existsSync(folder)) await unpackInto(folder, bin);
  return {
    executablePath: join(folder, 'chromium'),
    fonts: existsSync('/etc/fonts/fonts.conf') ? {} : { FONTCONFIG_FILE: join(folder, 'fonts.conf') },
    libraries: { LD_LIBRARY_PATH: join(folder, 'al2023', 'lib') },
  };
}

function binFolder(): string {
  return join(dirname(fileURLToPath(import.meta.resolve(PACKAGE))), '..', 'bin');
}

function versionOf(bin: string): string {
  return JSON.parse(readFileSync(join(bin, '..', 'package.json'), 'utf8')).version;
}

/** Unpacks beside the folder and renames, so that a run that was broken off leaves nothing half done. */
async function unpackInto(folder: string, bin: string): Promise<void> {
  await mkdir(dirname(folder), { recursive: true });
  const unfinished = await mkdtemp(`${folder}-`);
  await inflateAll(bin, unfinished);
  await writeFile(join(unfinished, 'fonts.conf'), fontsFile(folder));
  await rename(unfinished, folder).catch(async (error) => {
    await rm(unfinished, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  });
}

/** The package unpacks into the system's temporary folder; it is told that ours is that. */
async function inflateAll(bin: string, target: string): Promise<void> {
  const { inflate } = await import('@sparticuz/chromium');
  const before = process.env.TMPDIR;
  process.env.TMPDIR = target;
  try {
    const archives = ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br'];
    await Promise.all(archives.map((archive) => inflate(join(bin, archive))));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}

function fontsFile(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(folder, 'fonts')}</dir>
  <cachedir>${join(folder, 'fonts-cache')}</cachedir>
</fontconfig>
`;
}
