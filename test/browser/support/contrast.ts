import { expect, type Locator, type Page } from '@playwright/test';
import { type Colours, coloursOf } from './picture.ts';

/** WCAG 2.1, 1.4.3: text of ordinary size. */
const LEAST = 4.5;

/**
 * The contrast of text as it is painted: between the commonest colour of its box and, of the colours in it, the one
 * that stands out most. Fails where that is less than text needs.
 */
export async function expectReadable(page: Page, text: Locator, what: string): Promise<void> {
  await expect(text, what).toBeVisible();
  const contrast = contrastIn(await coloursOf(page, text));
  expect(contrast, `contrast of ${what}`).toBeGreaterThanOrEqual(LEAST);
}

export function contrastIn(colours: Colours): number {
  const [ground, ...others] = [...colours.keys()].map(luminance);
  return Math.max(1, ...others.map((other) => ratio(ground!, other)));
}

/** WCAG 2.1, "contrast ratio". */
function ratio(a: number, b: number): number {
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** WCAG 2.1, "relative luminance", of "251,248,241". */
function luminance(colour: string): number {
  const [red, green, blue] = colour.split(',').map((value) => {
    const part = Number(value) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}
