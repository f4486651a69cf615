'use client';

/** Opens the browser's own print. */
export function PrintButton() {
  return (
    <button type="button" className="action" onClick={() => window.print()}>
      Print
    </button>
  );
}
