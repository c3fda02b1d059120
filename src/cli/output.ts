import { once } from 'node:events';

/** Writes to standard output, and waits while whoever reads it is behind. */
export async function print(text: string): Promise<void> {
  if (!process.stdout.write(text)) await once(process.stdout, 'drain');
}

/** A reader that has had enough ("| head") ends the run quietly; any other failure to write is told. */
export function watchOutput(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    process.stderr.write(`counterpose: standard output: ${error.message}\n`);
    process.exit(2);
  });
  process.stderr.on('error', () => {});
}
