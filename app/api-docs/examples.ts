import type { Operation } from '../api/v1/operation';

/** A body for each thing that takes one; tests send it and hold what comes back against the document. */
export const BODIES: Readonly<Record<string, object>> = {
  makeSet: { tag: 'P-900', mounting: 'foot', service: 'Whey', supply: { phases: 3, volts: 400, hertz: 50 } },
  changeSet: { criticality: 2, note: null },
  makeMotor: {
    id: 'M-900',
    frame: '132S',
    phases: 3,
    poles: 4,
    ratings: [{ volts: 400, hertz: 50, kw: 5.5, rpm: 1455, amps: 10.9 }],
    place: 'at-repair',
  },
  changeMotor: { massKg: 41 },
  makeArea: { name: 'Fillers', surroundings: { ip: 'IP55', washdown: true, classification: null } },
  makeStore: { name: 'Main' },
  makeShelf: { storeId: '6f1c1d9e-6f0b-4a53-9d0e-2f6f4f4a1f10', name: 'B 4' },
  recordSwap: {
    setId: '0d5c9a1e-51f0-4b6e-8f0c-6a0b6d2d1c11',
    motorInId: '8a2b7f64-1c5d-4f77-9a53-4d7f0e9b2c12',
    motorOutId: '3b9e2d70-7e1a-4c39-8d15-9c4a5f6e7d13',
    fromSetId: null,
    outTo: { place: 'at-repair' },
    why: 'Bearing',
    note: null,
    workDone: [],
    checks: [],
  },
  assess: { set: { tag: 'P-900', mounting: 'foot' }, candidates: [{ id: 'M-900', frame: '132S' }] },
  plate: { text: '5.5 kW 400 V 50 Hz 1455 rpm 132S IP55' },
  confirmImport: { columns: [{ index: 0, field: 'tag' }], mounting: 'foot' },
  steerImport: { step: 'apply' },
};

const PARTS: Readonly<Record<string, string>> = {
  tag: 'P-900',
  number: 'M-900',
  frame: '184TC',
  id: '5e2f9b3c-2a64-4d8b-b1f7-0c8e7d6a5b14',
};

/** How it is asked from a command line. */
export function exampleOf({ id, method, path, body, isGuarded, once }: Operation): string {
  const filled = path.replaceAll(/\{(\w+)\}/g, (_, name: string) => PARTS[name] ?? name);
  const question = id === 'startImport' ? '?kind=sets&name=plates.csv' : '';
  const lines = [
    `curl ${method === 'get' ? '' : `-X ${method.toUpperCase()} `}"$PLANT/api/v1${filled}${question}"`,
    '-H "Authorization: Bearer $TOKEN"',
    ...(isGuarded ? [`-H 'If-Match: "3"'`] : []),
    ...(once ? ['-H "Idempotency-Key: $(uuidgen)"'] : []),
  ];
  const sent = BODIES[id];
  if (body && sent) lines.push(`-H "Content-Type: ${body.types[0]}"`, `-d '${JSON.stringify(sent)}'`);
  else if (body) lines.push('-H "Content-Type: text/csv"', '--data-binary @plates.csv');
  return lines.join(' \\\n  ');
}
