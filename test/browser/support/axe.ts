import { expect, type Page } from '@playwright/test';
import axe from 'axe-core';

interface AxeRun {
  violations: { id: string; help: string; nodes: { html: string; failureSummary?: string }[] }[];
}

/** Fails with the rule, the element and the advice where axe finds anything on the page. */
export async function expectAxeClean(page: Page, what: string): Promise<void> {
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const { run } = (globalThis as unknown as { axe: { run(): Promise<AxeRun> } }).axe;
    const { violations } = await run();
    return violations.flatMap(({ id, help, nodes }) =>
      nodes.map((node) => `${id}: ${help}\n${node.html}\n${node.failureSummary ?? ''}`),
    );
  });
  expect(found, `axe on ${what}`).toEqual([]);
}
