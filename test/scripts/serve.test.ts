import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../scripts/serve.mjs';

let folder: string;
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpose-serve-'));
  const course = join(folder, 'course');
  mkdirSync(join(course, 'lessons'), { recursive: true });
  writeFileSync(join(folder, 'private.txt'), 'not of the course');
  writeFileSync(join(folder, 'course-notes.txt'), 'not of the course');
  writeFileSync(join(course, 'index.html'), 'front');
  writeFileSync(join(course, '404.html'), 'nothing here');
  writeFileSync(join(course, 'lessons/index.html'), 'lessons');
  writeFileSync(join(course, 'lessons/möwe 1.js'), '1');
  site = await serve(course, { prefix: '/rigs/' });
});
afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true });
});

/** Sends the path as it is written; fetch would tidy it. */
function ask(path: string, method = 'GET') {
  const { hostname, port } = new URL(site.address);
  return new Promise<{ status: number; text: string; type: string; location: string }>((done, fail) => {
    const request = get({ hostname, port, path, method }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (piece) => {
        text += piece;
      });
      const { 'content-type': type = '', location = '' } = response.headers;
      response.on('end', () => done({ status: response.statusCode!, text, type, location }));
    });
    request.on('error', fail);
  });
}

test('a folder is its index.html', async () => {
  expect(await ask('/rigs/')).toMatchObject({ status: 200, text: 'front', type: 'text/html; charset=utf-8' });
  expect(await ask('/rigs/lessons/?plate=2')).toMatchObject({ status: 200, text: 'lessons' });
});

test('a folder without its slash is led to it', async () => {
  expect(await ask('/rigs/lessons?plate=2')).toMatchObject({ status: 301, location: './lessons/?plate=2' });
});

test('a name may hold any letters', async () => {
  const type = 'text/javascript; charset=utf-8';
  expect(await ask(`/rigs/lessons/${encodeURIComponent('möwe 1.js')}`)).toMatchObject({ status: 200, text: '1', type });
});

test.each([
  '/',
  '/elsewhere/',
  '/rigs/nowhere',
  '/rigs/../private.txt',
  '/rigs/..%2fprivate.txt',
  '/rigs/%2e%2e/private.txt',
  '/rigs/lessons/..%2f..%2fprivate.txt',
  '/rigs/..%2fcourse-notes.txt',
  '/rigs/%zz',
  '/rigs/index.html%00.js',
])('%s is not in the course', async (path) => {
  expect(await ask(path)).toMatchObject({ status: 404, text: 'nothing here' });
});

test('nothing can be sent to it', async () => {
  expect(await ask('/rigs/', 'POST')).toMatchObject({ status: 405, text: '' });
});

test('a head has no body', async () => {
  expect(await ask('/rigs/', 'HEAD')).toMatchObject({ status: 200, text: '' });
});
