import type { Plugin } from 'vite';

/**
 * Keeps the grader's work in a file of its own, with the solver in another: the page and its worker run the same two,
 * and nothing of the page's gets into the worker.
 */
export function oneDesk(): Plugin {
  const groups = [
    { name: 'solver', test: /[\\/]src[\\/]solver[\\/]/, priority: 2 },
    { name: 'desk', test: /[\\/]src[\\/]workbench[\\/]desk[\\/]worker\.ts/, priority: 1 },
  ];
  return {
    name: 'one-desk',
    apply: 'build',
    configEnvironment: (name) =>
      name === 'client' ? { build: { rolldownOptions: { output: { codeSplitting: { groups } } } } } : null,
  };
}
