import QRCode from 'qrcode';

/** Light modules that a QR code must have around it (ISO/IEC 18004, from memory). */
const QUIET = 4;

export interface DrawnCode {
  /** Side with the quiet zone, in modules. */
  size: number;
  /** The dark modules as one SVG path, one unit a module. */
  path: string;
}

/** A QR code that can be read with a quarter of it gone (level Q). */
export function qr(text: string): DrawnCode {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'Q' });
  const { size, data } = modules;
  let path = '';
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < size; column += 1) {
      const from = column;
      while (column < size && data[row * size + column] === 1) column += 1;
      if (column > from) path += `M${from + QUIET} ${row + QUIET}h${column - from}v1h${from - column}z`;
    }
  return { size: size + 2 * QUIET, path };
}
