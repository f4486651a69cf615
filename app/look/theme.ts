/** The day or the night sheet; null leaves it to the device. */
export const THEMES = ['day', 'night'] as const;
export type Theme = (typeof THEMES)[number];

export const readTheme = (value: string | undefined): Theme | null => THEMES.find((theme) => theme === value) ?? null;
