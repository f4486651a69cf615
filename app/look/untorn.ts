/** A line of figures that breaks only behind its commas and colons: a figure never stands without its unit. */
export const untorn = (text: string): string =>
  text
    .split(/(?<=[,:]) /)
    .map((part) => part.replaceAll(' ', '\u00a0'))
    .join(' ');
