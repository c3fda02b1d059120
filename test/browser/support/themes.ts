export type Theme = 'day' | 'night';
export const THEMES: readonly Theme[] = ['day', 'night'];
export const COLOR_SCHEMES = { day: 'light', night: 'dark' } as const satisfies Record<Theme, string>;

/** A telephone and a desk, in CSS pixels. */
export const WIDTHS = [360, 1280] as const;
