/** Today where the site is, as YYYY-MM-DD. `timezone` is an IANA name. */
export const today = (timezone: string) => new Intl.DateTimeFormat('en-CA', { timeZone: timezone }).format(new Date());
