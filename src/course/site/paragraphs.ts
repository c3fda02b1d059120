/** Plain text in paragraphs: parted by blank lines, line ends inside one turned into spaces. */
export function paragraphs(text: string): string[] {
  return text
    .trim()
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.replaceAll(/\s*\n\s*/g, ' '));
}
