/** Lets one loop wait until something has changed since it last looked. */
export class News {
  #isTold = false;
  #wake: (() => void) | null = null;

  tell(): void {
    this.#isTold = true;
    this.#wake?.();
  }

  async heard(): Promise<void> {
    if (!this.#isTold) {
      await new Promise<void>((resolve) => {
        this.#wake = resolve;
      });
    }
    this.#isTold = false;
    this.#wake = null;
  }
}
