/** The other sheet, kept on this phone. */
export function SheetSwitch() {
  const choose = (sheet: 'day' | 'night') => {
    document.documentElement.dataset.theme = sheet;
    localStorage.setItem('sheet', sheet);
  };
  return (
    <>
      <button className="tool to-night" type="button" onClick={() => choose('night')} aria-label="Night sheet">
        Night
      </button>
      <button className="tool to-day" type="button" onClick={() => choose('day')} aria-label="Day sheet">
        Day
      </button>
    </>
  );
}
