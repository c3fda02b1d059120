import { print, watchOutput } from './output.ts';
import { printable, Unusable, UsageError } from './refusal.ts';
import type { ExitStatus, VerbEntry } from './verb.ts';
import { VERBS } from './verbs.ts';

const USAGE = 'Usage: counterpose VERB …\n       counterpose VERB --help';

/** Runs the command line. @param args the words after "counterpose" */
export async function main(args: string[]): Promise<ExitStatus> {
  watchOutput();
  const [name, ...rest] = args;
  if (name === undefined) return refuseUsage('no verb is given', listOfVerbs());
  if (asksForHelp([name])) {
    await print(`${listOfVerbs()}\n`);
    return 0;
  }
  const entry = VERBS.find((verb) => verb.name === name);
  if (!entry) return refuseUsage(`there is no verb "${name}"`, listOfVerbs());
  return runVerb(entry, rest);
}

async function runVerb(entry: VerbEntry, args: string[]): Promise<ExitStatus> {
  const verb = await entry.load();
  if (asksForHelp(args)) {
    await print(`${verb.help.trim()}\n`);
    return 0;
  }
  try {
    return await verb.run(args);
  } catch (error) {
    if (error instanceof UsageError) return refuseUsage(`${entry.name}: ${error.message}`, usageOf(verb.help));
    if (error instanceof Unusable) return complain(error.message);
    throw error;
  }
}

function asksForHelp(args: string[]): boolean {
  return args.includes('--help') || args.includes('-h');
}

function listOfVerbs(): string {
  const width = Math.max(...VERBS.map((verb) => verb.name.length));
  const lines = VERBS.map((verb) => `  ${verb.name.padEnd(width)}  ${verb.says}`);
  return [USAGE, '', ...lines].join('\n');
}

function usageOf(help: string): string {
  return help.trim().split('\n\n', 1).join('');
}

function refuseUsage(message: string, usage: string): ExitStatus {
  complain(printable(message));
  process.stderr.write(`${usage}\n`);
  return 2;
}

function complain(message: string): ExitStatus {
  process.stderr.write(`counterpose: ${message}\n`);
  return 2;
}
