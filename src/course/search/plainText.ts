/** The words of a lesson's source, without components, drawings, formulas, code and marks; captions and questions stay. */
export function plainText(source: string): string {
  const spoken = [...source.matchAll(/\b(?:caption|question|seen|alt|of)="([^"]*)"/g)].map(([, words]) => words!);
  const text = source
    .replaceAll(/```.*?```/gs, ' ')
    .replaceAll(/\$\$.*?\$\$|\$[^$]*\$/gs, ' ')
    .replaceAll(/<Figure\b.*?<\/Figure>|<MovingPlate\b.*?(?:\/>|<\/MovingPlate>)/gs, ' ')
    .replaceAll(/<\/?[A-Za-z][^>]*>/gs, ' ')
    .replaceAll(/[*_`#|]/g, ' ');
  return [text, ...spoken].join(' ').replaceAll(/\s+/g, ' ').trim();
}
