const formats = new Map<string, Intl.DateTimeFormat>();

/** The format of a style in a time zone: made once, since making one takes longer than drawing a line. */
export function dateFormat(timeZone: string, style: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${timeZone} ${style.dateStyle} ${style.timeStyle}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.DateTimeFormat('en-GB', { ...style, timeZone });
    formats.set(key, format);
  }
  return format;
}
