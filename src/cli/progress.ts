/** Shows on standard error how far a long run has come, where a person looks on; nothing else there is disturbed. */
export class Progress {
  readonly #of: number | null;
  readonly #what: string;
  #done = 0;

  /** @param of how many there will be, or null where nobody knows */
  constructor(of: number | null, what: string) {
    this.#of = of;
    this.#what = what;
  }

  step(): void {
    this.#done++;
    const all = this.#of === null ? '' : ` of ${this.#of}`;
    if (process.stderr.isTTY) process.stderr.write(`\r${this.#done}${all} ${this.#what}`);
  }

  end(): void {
    if (process.stderr.isTTY && this.#done > 0) process.stderr.write('\n');
  }
}
