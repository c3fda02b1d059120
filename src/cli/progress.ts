/** Shows on standard error how far a long run has come, where a person looks on; nothing else there is disturbed. */
export class Progress {
  readonly #of: number;
  readonly #what: string;
  #done = 0;

  constructor(of: number, what: string) {
    this.#of = of;
    this.#what = what;
  }

  step(): void {
    this.#done++;
    if (process.stderr.isTTY) process.stderr.write(`\r${this.#done} of ${this.#of} ${this.#what}`);
  }

  end(): void {
    if (process.stderr.isTTY && this.#done > 0) process.stderr.write('\n');
  }
}
