import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/**
 * Takes from the heads of pages the style sheets that a script fetches together with what it loads later: the page
 * would wait for the workbench's styles before it is drawn, though nobody may come near the workbench.
 */
export function lateStyles(): AstroIntegration {
  return {
    name: 'late-styles',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(dir);
        const files = await readdir(folder, { recursive: true });
        const read = (file: string) => readFile(join(folder, file), 'utf8');
        const scripts = await Promise.all(files.filter((file) => file.endsWith('.js')).map(read));
        const late = scripts.flatMap(stylesFetchedBy);
        for (const page of files.filter((file) => file.endsWith('.html'))) {
          await writeFile(join(folder, page), withoutStyles(await read(page), late));
        }
      },
    },
  };
}

/** Names of the style sheets in a script's list of what its later imports need, as Vite writes it. */
export function stylesFetchedBy(script: string): string[] {
  const [, list = ''] = /__vite__mapDeps=.*?\bm\.f=\[([^\]]*)\]/s.exec(script) ?? [];
  return [...list.matchAll(/"(?:[^"]*\/)?([^"/]+\.css)"/g)].map(([, name]) => name!);
}

/** The page without the links to style sheets of these names. */
export function withoutStyles(html: string, names: readonly string[]): string {
  return html.replace(/<link rel="stylesheet" href="(?:[^"]*\/)?([^"/]+)"\s*\/?>/g, (link, name: string) =>
    names.includes(name) ? '' : link,
  );
}
