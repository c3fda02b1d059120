#!/usr/bin/env node
// Plain JavaScript that an old Node can read too: it only finds a Node that runs TypeScript, and hands over.
import { spawn } from 'node:child_process';
import { existsSync, realpathSync } from 'node:fs';
import module from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const self = fileURLToPath(import.meta.url);
const root = dirname(dirname(dirname(self)));

if (process.features.typescript) {
  module.enableCompileCache?.(join(root, 'node_modules', '.cache', 'counterpose'));
  const { main } = await import('./main.ts');
  process.exitCode = await main(process.argv.slice(2));
} else {
  handOver(findNode());
}

/** The Node that npm installed beside this package, or undefined. */
function findNode() {
  const require = module.createRequire(import.meta.url);
  try {
    const folder = dirname(require.resolve('node/package.json'));
    const found = ['node', 'node.exe'].map((name) => join(folder, 'bin', name)).find((path) => existsSync(path));
    return found && realpathSync(found) !== realpathSync(process.execPath) ? found : undefined;
  } catch {
    return undefined;
  }
}

function handOver(node) {
  if (!node) {
    process.stderr.write(
      `counterpose: found Node ${process.versions.node}, expected 22.18 or newer; "npm ci" in ${root} installs one beside it\n`,
    );
    process.exitCode = 2;
    return;
  }
  const child = spawn(node, [self, ...process.argv.slice(2)], { stdio: 'inherit' });
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
  for (const signal of signals) process.on(signal, () => child.kill(signal));
  child.on('error', (error) => {
    process.stderr.write(`counterpose: ${node} could not be started: ${error.message}\n`);
    process.exitCode = 2;
  });
  child.on('exit', (status, signal) => {
    if (signal === null) {
      process.exitCode = status;
      return;
    }
    process.removeAllListeners(signal);
    process.kill(process.pid, signal);
  });
}
