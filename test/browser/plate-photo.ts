import sharp from 'sharp';

/** A photograph of an invented plate, lying on its side as plates are photographed; `number` makes it one of a kind. */
export async function platePhoto(number: string): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const lines = [
    `NO ${number}`,
    'FRAME 213T',
    'HP 7.5  VOLTS 230/460',
    'AMPS 19.4/9.7  RPM 1755',
    'HZ 60 PH 3 SF 1.15',
  ];
  const text = lines.map((line, i) => `<text x="110" y="${170 + i * 95}">${line}</text>`).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="700"><rect width="1200" height="700" fill="#6d7274"/>
    <rect x="50" y="50" width="1100" height="600" rx="24" fill="#9aa0a0" stroke="#3b4042" stroke-width="6"/>
    <g font-family="monospace" font-size="58" fill="#565c5e">${text}</g></svg>`;
  const buffer = await sharp(Buffer.from(svg)).rotate(90).jpeg({ quality: 90 }).toBuffer();
  return { name: `${number}.jpg`, mimeType: 'image/jpeg', buffer };
}
