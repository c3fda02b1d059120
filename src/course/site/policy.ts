/**
 * What a page of the course may load: its own files and nothing else. No script and no style stands in a page, so
 * neither hashes nor 'unsafe-inline' are needed. A package for a school's system has a policy of its own.
 */
export const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
