import { type AuditTask, auditTolerances } from './audit-tolerances.ts';

/** Audits one exercise off the page's own thread, and says how far it is. */
self.onmessage = ({ data }: MessageEvent<AuditTask>) => {
  const audit = auditTolerances(data, (done, of) => self.postMessage({ done, of }));
  self.postMessage({ audit });
};
