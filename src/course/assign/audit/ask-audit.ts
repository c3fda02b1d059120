import type { AuditTask, ToleranceAudit } from './audit-tolerances.ts';

type Message = { done: number; of: number } | { audit: ToleranceAudit };

/**
 * Audits in a worker that ends with the audit. Rejects where no worker runs, or the audit itself fails.
 * @param signal ends it before its time
 */
export function askAudit(
  task: AuditTask,
  told: (done: number, of: number) => void,
  signal: AbortSignal,
): Promise<ToleranceAudit> {
  const worker = new Worker(new URL('./audit-worker.ts', import.meta.url), { type: 'module' });
  const audit = new Promise<ToleranceAudit>((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<Message>) => {
      if ('audit' in data) done(data.audit);
      else told(data.done, data.of);
    };
    worker.onerror = (event) => failed(new Error(event.message || 'the audit could not be run'));
    signal.addEventListener('abort', () => failed(new Error('the audit was stopped')));
    worker.postMessage(task);
  });
  return audit.finally(() => worker.terminate());
}
