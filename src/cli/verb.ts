/** 0 done, 1 a check that the verb makes did not hold, 2 unusable input or usage. */
export type ExitStatus = 0 | 1 | 2;

/** One verb of the command line; each stands in a file of its own in src/cli/verbs/. */
export interface Verb {
  /** What --help prints; the first paragraph is the usage, shown when the arguments cannot be used. */
  help: string;
  /** Reads its own arguments. Throws UsageError or Unusable. */
  run(args: string[]): Promise<ExitStatus>;
}

/** A verb as the table knows it: loaded only when it is asked for. */
export interface VerbEntry {
  name: string;
  /** One line for the list of verbs. */
  says: string;
  load(): Promise<Verb>;
}
