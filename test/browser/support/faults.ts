import type { BrowserContext } from '@playwright/test';

/** What went wrong in the pages of a context, in words, as it happens. */
export type Faults = string[];

/**
 * Collects errors on the console, uncaught errors, breaches of the content security policy, failed requests, and
 * requests to anywhere but the course itself.
 * @param address the course's own address, with its slash
 */
export async function watchFaults(context: BrowserContext, address: string): Promise<Faults> {
  const faults: Faults = [];
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  context.on('weberror', (webError) => {
    const error = webError.error();
    faults.push(`uncaught: ${error.stack ?? error.message}`);
  });
  context.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    if (why !== 'net::ERR_ABORTED') faults.push(`request: ${request.url()} ${why}`);
  });
  context.on('response', (response) => {
    if (response.status() >= 400) faults.push(`response: ${response.status()} ${response.url()}`);
  });
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(data|blob):/.test(url)) faults.push(`leaves the course: ${url}`);
  });
  await context.exposeBinding('noteBreach', (_source, words: string) => void faults.push(`policy: ${words}`));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      const { effectiveDirective, blockedURI, sourceFile, lineNumber } = event;
      const note = (globalThis as unknown as { noteBreach(words: string): void }).noteBreach;
      note(`${effectiveDirective} blocks ${blockedURI} (${sourceFile}:${lineNumber})`);
    });
  });
  return faults;
}
