import { type SaxesAttributePlain, SaxesParser, type SaxesTagPlain } from 'saxes';
import type { Entry, ZipFile } from 'yauzl';
import { SheetRefused } from './sheet-refused';

/** What a reader of one part is told: the name of an element without its prefix, its attributes, its text. */
export interface PartHandler {
  open?(name: string, attribute: (name: string) => string | null, isEmpty: boolean): void;
  text?(text: string): void;
  close?(name: string): void;
}

/** Reads one part of a workbook as it is unpacked; after each piece the caller may take what was gathered. */
export async function* xmlOf(zip: ZipFile, entry: Entry, handler: PartHandler): AsyncGenerator<void> {
  const parser = new SaxesParser({ xmlns: false, position: false });
  let wrong: Error | null = null;
  parser.on('doctype', () => {
    wrong ??= new SheetRefused(
      'The workbook’s inside defines names of its own (a document type): no spreadsheet program writes that.',
    );
  });
  parser.on('error', (error) => {
    wrong ??= new SheetRefused('The workbook is damaged: open it in the spreadsheet program and save it again.', {
      cause: error,
    });
  });
  parser.on('opentag', (tag: SaxesTagPlain) => {
    const attributes = tag.attributes as Record<string, string | SaxesAttributePlain>;
    const attribute = (name: string) => {
      const value = Object.hasOwn(attributes, name) ? attributes[name] : undefined;
      return typeof value === 'string' ? value : null;
    };
    handler.open?.(bare(tag.name), attribute, tag.isSelfClosing);
  });
  parser.on('text', (text) => handler.text?.(text));
  parser.on('cdata', (text) => handler.text?.(text));
  parser.on('closetag', (tag) => handler.close?.(bare(tag.name)));
  const decoder = new TextDecoder('utf-8', { fatal: false });
  const stream = await opened(zip, entry);
  try {
    for await (const piece of stream as AsyncIterable<Uint8Array>) {
      parser.write(decoder.decode(piece, { stream: true }));
      if (wrong) throw wrong;
      yield;
    }
    parser.write(decoder.decode());
    parser.close();
    if (wrong) throw wrong;
  } catch (error) {
    if (error instanceof SheetRefused) throw error;
    throw new SheetRefused('The workbook’s parts are damaged, or not as large as it says: save it again.', {
      cause: error,
    });
  } finally {
    stream.destroy();
  }
}

/** The same for a part that is read whole. */
export async function readPart(zip: ZipFile, entry: Entry, handler: PartHandler): Promise<void> {
  for await (const _ of xmlOf(zip, entry, handler));
}

const bare = (name: string): string => name.slice(name.indexOf(':') + 1);

async function opened(zip: ZipFile, entry: Entry) {
  try {
    return await zip.openReadStreamPromise(entry);
  } catch (error) {
    throw new SheetRefused('The workbook’s parts cannot be unpacked: save it again.', { cause: error });
  }
}
