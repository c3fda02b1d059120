/** Which lessons have been read to the end in this browser. Nothing is kept where keeping is forbidden. */
const KEY = 'counterpose.lessons-read';

export function lessonsRead(): Set<string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return new Set(Array.isArray(kept) ? kept.filter((number) => typeof number === 'string') : []);
  } catch {
    return new Set();
  }
}

/** Marks a lesson as read, or takes the mark back. Whether it could be kept. */
export function keepRead(number: string, isRead: boolean): boolean {
  const read = lessonsRead();
  if (isRead) read.add(number);
  else read.delete(number);
  try {
    localStorage.setItem(KEY, JSON.stringify([...read].sort()));
    return true;
  } catch {
    return false;
  }
}
