import type { News } from './news.ts';

/** Tasks as they come in, the next of which is asked for before it is needed. */
export class Coming<Task> {
  readonly #tasks: AsyncIterator<Task>;
  readonly #news: News;
  #fault: { error: unknown } | null = null;
  next: { task: Task } | null = null;
  isOver = false;

  /** @param news is told whenever one has come, or none will */
  constructor(tasks: AsyncIterable<Task> | Iterable<Task>, news: News) {
    this.#tasks = each(tasks);
    this.#news = news;
    this.#ask();
  }

  take(): Task {
    const { task } = this.next!;
    this.next = null;
    this.#ask();
    return task;
  }

  /** Throws what went wrong where the tasks come from. */
  throwFault(): void {
    if (this.#fault) throw this.#fault.error;
  }

  stop(): void {
    this.#tasks.return?.().catch(() => {});
  }

  #ask(): void {
    this.#tasks
      .next()
      .then(
        ({ done, value }) => {
          if (done) this.isOver = true;
          else this.next = { task: value };
        },
        (error) => {
          this.#fault = { error };
          this.isOver = true;
        },
      )
      .then(() => this.#news.tell());
  }
}

async function* each<Task>(tasks: AsyncIterable<Task> | Iterable<Task>): AsyncGenerator<Task> {
  yield* tasks;
}
