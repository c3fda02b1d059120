import { test as base, expect, type Page } from '@playwright/test';
import { serve } from '../../../scripts/serve.mjs';
import { type Faults, watchFaults } from './faults.ts';
import { DIST } from './site.ts';
import { COLOR_SCHEMES, type Theme } from './themes.ts';

export { expect, type Page };

interface Options {
  /** Of the window, in CSS pixels. */
  width: number;
  theme: Theme;
  /** false: the pages find that there is no WebGL. */
  webgl: boolean;
}

interface Host {
  /** The folder of the host that the course stands in. */
  prefix: string;
  /** The course's own address, with its slash. */
  address: string;
}

interface Fixtures {
  /** Filled while the test runs; any that is left at its end fails it. */
  faults: Faults;
}

/** Each test gets a page of its own on the built course, and fails on any fault that is not taken out of `faults`. */
export const test = base.extend<Options & Fixtures, Host>({
  width: [1280, { option: true }],
  theme: ['day', { option: true }],
  webgl: [true, { option: true }],

  prefix: ['/', { option: true, scope: 'worker' }],
  address: [
    async ({ prefix }, use) => {
      const site = await serve(DIST, { prefix });
      await use(site.address);
      await site.close();
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ address }, use) => use(address),
  viewport: async ({ width }, use) => use({ width, height: 800 }),
  colorScheme: async ({ theme }, use) => use(COLOR_SCHEMES[theme]),

  faults: [
    async ({ context, address, webgl }, use) => {
      if (!webgl) await context.addInitScript(hideWebgl);
      const faults = await watchFaults(context, address);
      await use(faults);
      expect(faults, 'faults in the pages of this test').toEqual([]);
    },
    { auto: true },
  ],
});

function hideWebgl() {
  for (const canvas of [HTMLCanvasElement, OffscreenCanvas]) {
    const getContext = canvas.prototype.getContext as (kind: string, ...rest: unknown[]) => unknown;
    canvas.prototype.getContext = function (this: unknown, kind: string, ...rest: unknown[]) {
      return kind.startsWith('webgl') ? null : getContext.call(this, kind, ...rest);
    } as never;
  }
}
