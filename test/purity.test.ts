import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

/** Shows that the project's own lint rules refuse what would make the solver or the grader impure, or tie delivery to one place. */

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'purity-'));

/** One line of code each, and the rule that must refuse it, or null where it is allowed. */
const IN_SOLVER: [string, string | null][] = [
  ['export const n = Math.sin(1);', 'plugin'],
  ['export const n = Math.cos(1);', 'plugin'],
  ['export const n = Math.tan(1);', 'plugin'],
  ['export const n = Math.asin(1);', 'plugin'],
  ['export const n = Math.acos(1);', 'plugin'],
  ['export const n = Math.atan(1);', 'plugin'],
  ['export const n = Math.atan2(1, 1);', 'plugin'],
  ['export const n = Math.sinh(1);', 'plugin'],
  ['export const n = Math.pow(2, 3);', 'plugin'],
  ['export const n = Math.exp(1);', 'plugin'],
  ['export const n = Math.log2(1);', 'plugin'],
  ['export const n = Math.cbrt(1);', 'plugin'],
  ['export const n = Math.hypot(1, 1);', 'plugin'],
  ['export const n = Math.random();', 'plugin'],
  ['export const n = [1].map(Math.cbrt);', 'plugin'],
  ["export const n = Math['sin'](1);", 'plugin'],
  ['export const { sin } = Math;', 'plugin'],
  ['export const n = [Math];', 'plugin'],
  ['export const n = (x: number) => x ** 3;', 'plugin'],
  ['export const n = (x: number) => { x **= 3; return x; };', 'plugin'],
  ['export const n = globalThis.Math.sin(1);', 'lint/style/noRestrictedGlobals'],
  ['export const n = Date.now();', 'lint/style/noRestrictedGlobals'],
  ['export const n = new Date();', 'lint/style/noRestrictedGlobals'],
  ['export const n = performance.now();', 'lint/style/noRestrictedGlobals'],
  ['export const n = document.title;', 'lint/style/noRestrictedGlobals'],
  ['export const n = window.innerWidth;', 'lint/style/noRestrictedGlobals'],
  ['export const n = crypto.getRandomValues;', 'lint/style/noRestrictedGlobals'],
  ["export { Vector3 } from 'three';", 'lint/style/noRestrictedImports'],
  ["export { useState } from 'react';", 'lint/style/noRestrictedImports'],
  ["export { readFileSync } from 'node:fs';", 'lint/style/noRestrictedImports'],
  ["export const n = import('three');", 'lint/style/noRestrictedImports'],
  ["export { n } from '../workbench/plate.ts';", 'lint/style/noRestrictedImports'],
  ["export { n } from '../cli/solve.ts';", 'lint/style/noRestrictedImports'],
  ["export { n } from '../course/site/policy.ts';", 'lint/style/noRestrictedImports'],
  ["export { n } from '../grader/result.ts';", 'lint/style/noRestrictedImports'],
  ["export { n } from './number/index.ts';", null],
  ["export { n } from '../solver/number/index.ts';", null],
  ['export const n = Math.sqrt(2) + Math.abs(-1) + Math.min(1, 2) + Math.fround(0.1) + Math.PI;', null],
];

const IN_GRADER: [string, string | null][] = [
  ["export { n } from '../workbench/plate.ts';", 'lint/style/noRestrictedImports'],
  ["export { useState } from 'react';", 'lint/style/noRestrictedImports'],
  ['export const n = Math.tan(1);', 'plugin'],
  ['export const n = Date.now();', 'lint/style/noRestrictedGlobals'],
  ["export { n } from '../solver/index.ts';", null],
];

const IN_DELIVERY: [string, string | null][] = [
  ["export { readFileSync } from 'node:fs';", 'lint/style/noRestrictedImports'],
  ["export { useState } from 'react';", 'lint/style/noRestrictedImports'],
  ["export { n } from '../cli/solve.ts';", 'lint/style/noRestrictedImports'],
  ['export const n = crypto.subtle;', 'lint/style/noRestrictedGlobals'],
  ['export const n = document.title;', 'lint/style/noRestrictedGlobals'],
  ["export { sha256 } from '@noble/hashes/sha2.js';", null],
  ["export { n } from '../grader/index.ts';", null],
  ['export const n = Date.parse("2026-12-01T17:00Z");', null],
];

const OUTSIDE: [string, string | null][] = [
  ['export const n = Math.sin(1) + 2 ** 3 + Date.now();', null],
  ["export { useState } from 'react';", null],
];

const samples = [
  ...IN_SOLVER.map(([code, rule], i) => ({ path: `src/solver/sample${i}.ts`, code, rule })),
  ...IN_SOLVER.map(([code, rule], i) => ({ path: `src/solver/links/sample${i}.ts`, code: deeper(code), rule })),
  ...IN_GRADER.map(([code, rule], i) => ({ path: `src/grader/sample${i}.ts`, code, rule })),
  ...IN_DELIVERY.map(([code, rule], i) => ({ path: `src/delivery/sample${i}.ts`, code, rule })),
  ...OUTSIDE.map(([code, rule], i) => ({ path: `src/workbench/sample${i}.ts`, code, rule })),
];

function deeper(code: string): string {
  return code.replace("'../", "'../../");
}

interface Finding {
  category: string;
  location: { path: string };
}

const found = new Map<string, string[]>();

beforeAll(() => {
  cpSync(join(root, 'biome.json'), join(folder, 'biome.json'));
  cpSync(join(root, 'lint'), join(folder, 'lint'), { recursive: true });
  for (const { path, code } of samples) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), `${code}\n`);
  }
  const biome = join(root, 'node_modules/.bin/biome');
  const run = spawnSync(
    biome,
    ['lint', '--vcs-enabled=false', '--reporter=json', '--max-diagnostics=none', '--diagnostic-level=error', 'src'],
    { cwd: folder, encoding: 'utf8' },
  );
  const { diagnostics }: { diagnostics: Finding[] } = JSON.parse(run.stdout);
  for (const { category, location } of diagnostics) {
    found.set(location.path, [...(found.get(location.path) ?? []), category]);
  }
});

afterAll(() => rmSync(folder, { recursive: true }));

describe('the lint rules', () => {
  test.each(samples.filter(({ rule }) => rule !== null))('refuse in $path: $code', ({ path, rule }) => {
    expect(found.get(path)).toContain(rule);
  });
  test.each(samples.filter(({ rule }) => rule === null))('allow in $path: $code', ({ path }) => {
    expect(found.get(path) ?? []).toEqual([]);
  });
});
