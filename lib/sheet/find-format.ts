import { SheetRefused } from './sheet-refused';

/** Text or a workbook, by the first bytes. What is neither is refused in words that help. */
export function formatOf(bytes: Uint8Array): 'csv' | 'xlsx' {
  if (bytes.length === 0) throw new SheetRefused('The file is empty.');
  const starts = (...first: number[]) => first.every((byte, i) => bytes[i] === byte);
  if (starts(0x50, 0x4b, 0x03, 0x04) || starts(0x50, 0x4b, 0x05, 0x06)) return 'xlsx';
  if (starts(0xd0, 0xcf, 0x11, 0xe0))
    throw new SheetRefused(
      'It is a workbook of the old kind (.xls) or one behind a password: save it as .xlsx without a password, or as CSV.',
    );
  if (starts(0x25, 0x50, 0x44, 0x46))
    throw new SheetRefused('It is a PDF: save the table as .xlsx or CSV where it was made.');
  if (starts(0x89, 0x50, 0x4e, 0x47) || starts(0xff, 0xd8, 0xff) || starts(0x47, 0x49, 0x46, 0x38))
    throw new SheetRefused('It is a picture: a plate’s photograph is kept with its motor, not imported.');
  if (starts(0x1f, 0x8b)) throw new SheetRefused('It is packed (gzip): unpack it first.');
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 512)).trimStart().toLowerCase();
  if (/^(<!doctype html|<html|<head|<table)/.test(head))
    throw new SheetRefused(
      'It is a web page, whatever its name says: open it in the spreadsheet program and save it as .xlsx or CSV.',
    );
  if (head.startsWith('<?xml')) throw new SheetRefused('It is XML: save it as .xlsx or CSV.');
  if (head.startsWith('{\\rtf')) throw new SheetRefused('It is a text document: save the table as .xlsx or CSV.');
  return 'csv';
}
