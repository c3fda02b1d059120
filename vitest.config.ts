import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['test/**/*.test.ts', 'test/**/*.test.tsx'], exclude: ['test/browser/**', 'node_modules/**'] },
});
