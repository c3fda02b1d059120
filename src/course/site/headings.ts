export interface Heading {
  id: string;
  /** Without marks; only what stands before a colon. */
  text: string;
}

/** The second-level headings of a piece of HTML, in order, whether Markdown or a component made them. */
export function headingsIn(html: string): Heading[] {
  return [...html.matchAll(/<h2\b[^>]*\bid="([^"]+)"[^>]*>(.*?)<\/h2>/gs)].map(([, id, inner]) => ({
    id: id!,
    text: inner!
      .replaceAll(/<[^>]*>/g, '')
      .split(':')[0]!
      .trim(),
  }));
}
