import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '../..');
export const NODE = join(ROOT, 'node_modules/.bin/node');
export const LAUNCHER = join(ROOT, 'src/cli/counterpose.mjs');

export interface Outcome {
  status: number | null;
  signal: NodeJS.Signals | null;
  stdout: string;
  stderr: string;
}

export interface Conditions {
  /** What comes in on standard input, which then ends; nothing where not said. */
  input?: string | Uint8Array;
  /** The folder it runs in. */
  cwd?: string;
  /** Another Node than the project's, with arguments of its own. */
  node?: string;
  nodeArgs?: string[];
}

/** Starts the real command. */
export function start(args: string[], { cwd, node = NODE, nodeArgs = [] }: Conditions = {}) {
  return spawn(node, [...nodeArgs, LAUNCHER, ...args], { cwd, stdio: 'pipe' });
}

/** Runs the real command to its end. */
export function counterpose(args: string[], conditions: Conditions = {}): Promise<Outcome> {
  const child = start(args, conditions);
  let stdout = '';
  let stderr = '';
  child.stdout.setEncoding('utf8').on('data', (text) => {
    stdout += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text) => {
    stderr += text;
  });
  child.stdin.on('error', () => {});
  child.stdin.end(conditions.input ?? '');
  return new Promise((done, fail) => {
    child.on('error', fail);
    child.on('close', (status, signal) => done({ status, signal, stdout, stderr }));
  });
}
