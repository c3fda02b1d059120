let context: CanvasRenderingContext2D | null | undefined;
const widths = new Map<string, number>();

/** Pixels that a plate's label takes; a fair guess where nothing can be measured. */
export function textWidth(text: string): number {
  const known = widths.get(text);
  if (known !== undefined) return known;
  if (context === undefined)
    context = typeof document === 'undefined' ? null : document.createElement('canvas').getContext('2d');
  if (!context) return text.length * 7;
  context.font = '13px Literata, Georgia, serif';
  const width = Math.ceil(context.measureText(text).width) + 2;
  widths.set(text, width);
  return width;
}
