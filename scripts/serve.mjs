// Serves the built course on this machine. Plain JavaScript without packages, so that it runs on any Node and can be
// handed out beside the course: pages opened as files cannot load their scripts.
// Usage: node serve.mjs [FOLDER] [PORT]
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const FIRST_PORT = 4321;
const PORTS_TRIED = 50;
const TYPES = new Map([
  ['.css', 'text/css; charset=utf-8'],
  ['.csv', 'text/csv; charset=utf-8'],
  ['.html', 'text/html; charset=utf-8'],
  ['.ico', 'image/x-icon'],
  ['.js', 'text/javascript; charset=utf-8'],
  ['.json', 'application/json; charset=utf-8'],
  ['.mjs', 'text/javascript; charset=utf-8'],
  ['.png', 'image/png'],
  ['.svg', 'image/svg+xml; charset=utf-8'],
  ['.txt', 'text/plain; charset=utf-8'],
  ['.webmanifest', 'application/manifest+json; charset=utf-8'],
  ['.webp', 'image/webp'],
  ['.woff', 'font/woff'],
  ['.woff2', 'font/woff2'],
  ['.xml', 'application/xml; charset=utf-8'],
]);

/**
 * Serves a folder on 127.0.0.1.
 * @param {string} folder
 * @param {{ port?: number, prefix?: string }} [options] port 0 takes any free one; prefix is the path above the
 *   course, "/" or "/some/where/"
 * @returns {Promise<{ address: string, close(): Promise<void> }>} address ends in "/"
 */
export async function serve(folder, { port = 0, prefix = '/' } = {}) {
  const root = resolve(folder);
  const server = createServer((request, response) => {
    answer(root, prefix, request, response).catch((error) => {
      console.error(error);
      response.destroy();
    });
  });
  await listen(server, port);
  return {
    address: `http://127.0.0.1:${server.address().port}${prefix}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

function listen(server, port) {
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, '127.0.0.1', done);
  });
}

async function answer(root, prefix, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const url = new URL(request.url, 'http://localhost');
  const path = pathWithin(root, prefix, url.pathname);
  const found = path && (await fileAt(path));
  if (found === 'folder') {
    response.writeHead(301, { location: `./${url.pathname.split('/').at(-1)}/${url.search}` }).end();
    return;
  }
  if (found) return send(request, response, 200, found);
  const notFound = await fileAt(join(root, '404.html'));
  if (notFound) return send(request, response, 404, notFound);
  response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('There is no such page.\n');
}

/** Where a request's path leads inside the folder; undefined where it leads out of it or is no path. */
function pathWithin(root, prefix, pathname) {
  if (!pathname.startsWith(prefix)) return undefined;
  try {
    const path = resolve(root, `.${sep}${decodeURIComponent(pathname.slice(prefix.length))}`);
    const within = path === root || path.startsWith(root + sep);
    if (!within || path.includes('\0')) return undefined;
    return pathname.endsWith('/') ? join(path, 'index.html') : path;
  } catch {
    return undefined;
  }
}

/** The file at a path with its size; 'folder' for a folder; undefined where there is nothing. */
async function fileAt(path) {
  const stats = await stat(path).catch(() => undefined);
  if (stats?.isDirectory()) return 'folder';
  return stats?.isFile() ? { path, size: stats.size } : undefined;
}

function send(request, response, status, file) {
  response.writeHead(status, {
    'content-type': TYPES.get(extname(file.path).toLowerCase()) ?? 'application/octet-stream',
    'content-length': file.size,
    'cache-control': 'no-cache',
    'x-content-type-options': 'nosniff',
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  createReadStream(file.path)
    .on('error', () => response.destroy())
    .pipe(response);
}

/** Serves on the first free port from the one asked for. */
async function serveOnFreePort(folder, port) {
  for (let tried = port; tried < port + PORTS_TRIED; tried++) {
    try {
      return await serve(folder, { port: tried });
    } catch (error) {
      if (error.code !== 'EADDRINUSE' && error.code !== 'EACCES') throw error;
    }
  }
  return serve(folder);
}

async function run([folder = 'dist', port = String(FIRST_PORT)]) {
  if ((await fileAt(join(folder, 'index.html'))) === undefined) {
    console.error(`serve: there is no built course in "${folder}"; "npm run build" makes one`);
    process.exitCode = 2;
    return;
  }
  const { address } = await serveOnFreePort(folder, Number(port));
  console.log(`Counterpose is at ${address}\nCtrl+C ends it.`);
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) await run(process.argv.slice(2));
