/** Offers the other sheet. A plain form: it works before and without script. */
export function ThemeSwitch() {
  return (
    <form method="post" action="/theme">
      <button className="tool to-night" type="submit" name="theme" value="night" aria-label="Night sheet">
        Night
      </button>
      <button className="tool to-day" type="submit" name="theme" value="day" aria-label="Day sheet">
        Day
      </button>
    </form>
  );
}
