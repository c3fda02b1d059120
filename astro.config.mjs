import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import react from '@astrojs/react';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { keepTogether } from './src/course/site/keep-together.ts';
import { lateStyles } from './src/course/site/late-styles.ts';
import { localServer } from './src/course/site/local-server.ts';
import { plainMathml } from './src/course/site/plain-mathml.ts';
import { portable } from './src/course/site/portable.ts';
import { wholeLinks } from './src/course/site/whole-links.ts';
import { oneDesk } from './src/workbench/desk/oneDesk.ts';
import { leanThree } from './src/workbench/plate/three/lean.ts';

// Every page but 404.html is made independent of where it is served (see portable.ts). That one page is shown
// in place of any address, so it has to know the folder: COURSE_BASE=/courses/rigs/ npm run build
export default defineConfig({
  output: 'static',
  base: process.env.COURSE_BASE ?? '/',
  trailingSlash: 'ignore',
  compressHTML: true,
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  integrations: [mdx(), react(), lateStyles(), portable(), localServer(), wholeLinks()],
  markdown: {
    // The highlighter writes style attributes, which the pages' policy forbids.
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: [remarkMath],
      rehypePlugins: [
        [rehypeKatex, { output: 'mathml', strict: 'error', throwOnError: true }],
        plainMathml,
        keepTogether,
      ],
    }),
  },
  vite: {
    plugins: [leanThree(), oneDesk()],
    build: { assetsInlineLimit: 0, modulePreload: false },
    // What scripts load (chunks, workers) is found from where they themselves lie.
    experimental: { renderBuiltUrl: () => ({ relative: true }) },
    worker: { format: 'es' },
  },
});
