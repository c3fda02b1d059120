import { copyFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** Hands the local server out beside the built course: `node serve.mjs .` in its folder serves it. */
export function localServer(): AstroIntegration {
  return {
    name: 'local-server',
    hooks: {
      'astro:build:done': ({ dir }) => copyFile('scripts/serve.mjs', fileURLToPath(new URL('serve.mjs', dir))),
    },
  };
}
