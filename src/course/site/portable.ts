import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/**
 * Makes the built pages work in any folder of any host, inside a school's package, and opened from disk: each
 * address that starts at the site's root is rewritten to start at the page, and a folder's address names its
 * index.html. Pages and lessons are written with plain root addresses ("/glossary/#bone").
 */
export function portable(): AstroIntegration {
  let base = '/';
  return {
    name: 'portable',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(dir);
        for (const page of await pagesIn(folder)) await rewrite(folder, page, base);
      },
    },
  };
}

async function pagesIn(folder: string) {
  const files = await readdir(folder, { recursive: true });
  return files.filter((file) => file.endsWith('.html') && file !== '404.html').map((file) => file.replaceAll('\\', '/'));
}

async function rewrite(folder: string, page: string, base: string) {
  const path = join(folder, page);
  const html = await readFile(path, 'utf8');
  await writeFile(path, fromThePage(html, page, base));
}

/**
 * The page's HTML with its root addresses made relative.
 * @param page path of the page in the site, as "lessons/1.1-bones/index.html"
 * @param base folder of the site, with a slash at both ends
 */
export function fromThePage(html: string, page: string, base: string): string {
  return html.replace(/ (href|src|data-root)="([^"]*)"/g, (whole, name: string, address: string) => {
    if (!address.startsWith('/') || address.startsWith('//')) return whole;
    const inside = address.startsWith(base) ? address.slice(base.length) : address.slice(1);
    return ` ${name}="${name === 'data-root' ? rootFrom(page) : toFile(inside, page)}"`;
  });
}

function rootFrom(page: string) {
  return '../'.repeat(page.split('/').length - 1) || './';
}

function toFile(address: string, page: string) {
  const [, path, rest] = /^([^?#]*)(.*)$/s.exec(address)!;
  const file = path === '' || path!.endsWith('/') ? `${path}index.html` : path!;
  const there = relative(join('/', page, '..'), join('/', file));
  return `${there}${rest}`;
}
