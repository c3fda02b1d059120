import { type ParseArgsConfig, type ParseArgsOptionsConfig, parseArgs } from 'node:util';
import { UsageError } from './refusal.ts';

/**
 * A verb's options and other arguments, by node:util parseArgs.
 * Throws UsageError for an option that is unknown, lacks its value, or is given twice without being `multiple`.
 */
export function readArguments<const Options extends ParseArgsOptionsConfig>(args: string[], options: Options) {
  const config = { args, options, allowPositionals: true, tokens: true } as const satisfies ParseArgsConfig;
  const parsed = parseOrRefuse(config);
  const seen = new Set<string>();
  for (const token of parsed.tokens) {
    if (token.kind !== 'option') continue;
    if (seen.has(token.name) && !options[token.name]?.multiple) throw new UsageError(`${token.rawName} is given twice`);
    seen.add(token.name);
  }
  return { values: parsed.values, positionals: parsed.positionals };
}

function parseOrRefuse<const Config extends ParseArgsConfig>(config: Config) {
  try {
    return parseArgs(config);
  } catch (error) {
    if (error instanceof TypeError) throw new UsageError(error.message.replaceAll('\n', ' '));
    throw error;
  }
}
