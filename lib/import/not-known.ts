/**
 * Whether a cell says that nobody knows: empty, a dash, "n/a", "?", "unknown", "k.A.", "#N/A". English, German, French
 * and Spanish words from memory.
 */
export function isNotKnown(text: string): boolean {
  if (text.length > 40) return false;
  const told = text.trim().toLowerCase().replaceAll(/[\s.]/g, '');
  return /^[-–—−_?*/\\]*$/.test(told) || WORDS.has(told);
}

const WORDS = new Set(
  'n/a na #n/a #na #nv nk n/k unknown unk unkn notknown notavailable notapplicable notlegible illegible unreadable tbd tba tbc tobeconfirmed missing noplate nodata null nil (blank) (leer) ka kA k/a unbekannt unleserlich inconnu inconnue illisible nc n/d nd s/d desconocido ilegible sindatos xxx ??'
    .toLowerCase()
    .split(' '),
);
