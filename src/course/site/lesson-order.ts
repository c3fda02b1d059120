/** What of a lesson its place in the course depends on. */
interface Placed {
  /** The name of its folder. */
  readonly id: string;
  readonly data: { readonly number: string };
  readonly filePath?: string | undefined;
}

/**
 * The course's own lessons and private ones by number; a private lesson takes the place of an own one whose folder bears
 * the same name. Throws where a folder's name does not start with its number, and where two lessons have one number.
 */
export function inOrder<Lesson extends Placed>(own: readonly Lesson[], others: readonly Lesson[]): Lesson[] {
  const lessons = [...new Map([...own, ...others].map((lesson) => [lesson.id, lesson])).values()];
  const byNumber = new Map<string, Lesson>();
  for (const lesson of lessons) {
    const { number } = lesson.data;
    if (!lesson.id.startsWith(`${number}-`)) {
      throw new Error(`${lesson.filePath}: the folder's name must start with its number, "${number}-".`);
    }
    const other = byNumber.get(number);
    if (other) {
      throw new Error(
        `${lesson.filePath}: lesson ${number} is there already. Name the folder ${other.id} to take its place, or choose a number that is free.`,
      );
    }
    byNumber.set(number, lesson);
  }
  return lessons.sort((a, b) => a.data.number.localeCompare(b.data.number));
}
