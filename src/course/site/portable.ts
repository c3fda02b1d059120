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
        const files = (await readdir(folder, { recursive: true })).map((file) => file.replaceAll('\\', '/'));
        for (const file of files) {
          if (file.endsWith('.html') && file !== '404.html')
            await rewrite(join(folder, file), (html) => fromThePage(html, file, base));
          if (file.endsWith('.css')) await rewrite(join(folder, file), (css) => fromTheSheet(css, file, base));
        }
      },
    },
  };
}

async function rewrite(path: string, change: (text: string) => string) {
  await writeFile(path, change(await readFile(path, 'utf8')));
}

/**
 * The page's HTML with its root addresses made relative.
 * @param page path of the page in the site, as "lessons/1.1-bones/index.html"
 * @param base folder of the site, with a slash at both ends
 */
export function fromThePage(html: string, page: string, base: string): string {
  return html.replace(/ (href|src|data-root)="([^"]*)"/g, (whole, name: string, address: string) => {
    if (!isFromRoot(address)) return whole;
    return ` ${name}="${name === 'data-root' ? rootFrom(page) : toFile(within(address, base), page)}"`;
  });
}

/** The same for what a style sheet loads: `url(/…)`. */
export function fromTheSheet(css: string, sheet: string, base: string): string {
  return css.replace(/url\((["']?)(\/[^)"']*)\1\)/g, (whole, _quote, address: string) => {
    return isFromRoot(address) ? `url(${toFile(within(address, base), sheet)})` : whole;
  });
}

const isFromRoot = (address: string) => address.startsWith('/') && !address.startsWith('//');

const within = (address: string, base: string) => address.slice(address.startsWith(base) ? base.length : 1);

function rootFrom(page: string) {
  return '../'.repeat(page.split('/').length - 1) || './';
}

function toFile(address: string, page: string) {
  const [, path, rest] = /^([^?#]*)(.*)$/s.exec(address)!;
  const file = path === '' || path!.endsWith('/') ? `${path}index.html` : path!;
  const there = relative(join('/', page, '..'), join('/', file));
  return `${there}${rest}`;
}
