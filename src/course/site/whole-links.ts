import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** Fails the build where a page links to, loads or opens something that is not there. */
export function wholeLinks(): AstroIntegration {
  return {
    name: 'whole-links',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const files = (await readdir(folder, { recursive: true })).map((file) => file.replaceAll('\\', '/'));
        const pages = new Map<string, string>();
        for (const file of files.filter((name) => name.endsWith('.html') && name !== '404.html')) {
          pages.set(file, await readFile(join(folder, file), 'utf8'));
        }
        const broken = brokenLinks(pages, new Set(files));
        if (broken.length > 0) throw new Error(`Links that lead nowhere:\n${broken.join('\n')}`);
        logger.info(`every link of ${pages.size} pages leads somewhere`);
      },
    },
  };
}

/**
 * What leads nowhere, a line each.
 * @param pages path in the site to HTML
 * @param files every file of the site
 */
export function brokenLinks(pages: ReadonlyMap<string, string>, files: ReadonlySet<string>): string[] {
  const ids = new Map([...pages].map(([path, html]) => [path, idsIn(html)]));
  const broken: string[] = [];
  for (const [page, html] of pages) {
    for (const id of repeated(idList(html))) broken.push(`${page}: two things have the id "${id}"`);
    for (const address of addressesIn(html)) {
      const fault = faultOf(address, page);
      if (fault) broken.push(`${page}: ${address} (${fault})`);
    }
  }
  return broken;

  function faultOf(address: string, page: string): string | undefined {
    const { origin, pathname, hash } = new URL(address, `http://site/${page}`);
    if (origin !== 'http://site') return undefined;
    const path = decodeURIComponent(pathname.slice(1));
    const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
    if (!files.has(file)) return 'no such file';
    const there = ids.get(file);
    if (hash && there && !there.has(decodeURIComponent(hash.slice(1)))) return 'no such place on that page';
    return undefined;
  }
}

/** Addresses in href and src, and the words that buttons open, as "#id". */
function addressesIn(html: string): string[] {
  const addresses = [...html.matchAll(/ (?:href|src)="([^"]*)"/g)].map(([, address]) => unescaped(address!));
  const opened = [...html.matchAll(/ (?:popovertarget|aria-labelledby)="([^"]*)"/g)].map(([, id]) => `#${id}`);
  return [...addresses, ...opened];
}

const idList = (html: string) => [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => unescaped(id!));

const idsIn = (html: string) => new Set(idList(html));

const repeated = (list: readonly string[]) => new Set(list.filter((item, place) => list.indexOf(item) !== place));

const unescaped = (text: string) => text.replaceAll('&#38;', '&').replaceAll('&amp;', '&');
