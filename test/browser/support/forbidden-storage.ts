/** In a page, before its own scripts: the browser lets nothing be stored. */
export function forbidStorage() {
  Object.defineProperty(globalThis, 'indexedDB', {
    get: () => {
      throw new DOMException('Storage is forbidden.', 'SecurityError');
    },
  });
}
