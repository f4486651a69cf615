const MB = 1024 * 1024;

/** What a file may be at most. A register of a very large plate list stays far below each. */
export const LIMITS = {
  /** Of the file as it comes: 50 000 rows of 60 columns in a workbook take about 15 MB. */
  bytes: 25 * MB,
  rows: 50_000,
  columns: 200,
  /** Characters of one cell: what a spreadsheet program holds at most; a row that says so much is refused by itself. */
  cell: 32_767,
  /** Characters of one record: a quote that was never closed runs up to here and no further. */
  record: 200_000,
  /** Parts of a workbook; a usual one has about twenty. */
  parts: 500,
  /** Bytes of a workbook's parts together, unpacked. */
  unpacked: 400 * MB,
  /** Unpacked over packed of one part above a megabyte; sheets of numbers reach about 25, a bomb a thousand. */
  ratio: 120,
  /** Strings that a workbook shares between cells. */
  strings: 1_000_000,
} as const;
