/** A form sends its line ends as two characters; other control characters the database refuses. */
export const severalLines = (text: string) => text.replace(/\r\n?/g, '\n').replace(/[^\P{Cc}\n\t]/gu, ' ');
