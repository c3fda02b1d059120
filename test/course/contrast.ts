/**
 * Contrast of two colours as WCAG 2.2 defines it: https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio and
 * #dfn-relative-luminance, with the corrected threshold 0.04045 of sRGB (IEC 61966-2-1).
 * @param first "#rrggbb"
 */
export function contrast(first: string, second: string): number {
  const [light, dark] = [luminance(first), luminance(second)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255));
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

const linear = (channel: number) => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
