import { AREA, MOTOR_IN, MOTOR_OUT, SET, SHELF, STORE } from './ids';

/** What is sent in the examples, by operation; tests send them as they stand. */
export const BODIES: Readonly<Record<string, object>> = {
  makeArea: { name: 'Fillers', surroundings: { ip: 'IP55', washdown: true, classification: null } },
  makeStore: { name: 'Main' },
  makeShelf: { storeId: STORE, name: 'B 4' },
  makeSet: {
    tag: 'P-900',
    mounting: 'foot',
    service: 'Whey',
    areaId: AREA,
    supply: { phases: 3, volts: 400, hertz: 50, start: 'direct' },
    coupling: { type: 'coupling', ratio: 1 },
    load: { kind: 'constant-torque', shaftKw: 3.9, atPumpRpm: 1450 },
  },
  changeSet: { criticality: 2, supply: { overloadMinA: 9, overloadMaxA: 13 }, service: null },
  makeMotor: {
    id: 'M-900',
    frame: '132S',
    mounting: 'IM B3',
    phases: 3,
    poles: 4,
    ratings: [{ volts: 400, hertz: 50, kw: 5.5, rpm: 1455, amps: 10.9 }],
    place: 'on-shelf',
    shelfId: SHELF,
  },
  changeMotor: { massKg: 64, serial: 'L-20871' },
  recordSwap: {
    setId: SET,
    motorInId: MOTOR_IN,
    motorOutId: MOTOR_OUT,
    outTo: { place: 'at-repair' },
    why: 'Bearing',
    workDone: [],
    checks: [],
  },
  assess: {
    set: { tag: 'P-900', mounting: 'foot', failed: { frame: '132S', poles: 4 } },
    candidates: [{ id: 'M-900', frame: '112M', poles: 4 }],
  },
  plate: { text: '5.5 kW 400 V 50 Hz 1455 rpm 132S IP55 LOT 7' },
  confirmImport: { columns: [{ index: 0, field: 'tag' }], mounting: 'foot' },
  steerImport: { step: 'apply' },
};

/** The file of the example that sends one. */
export const FILE = 'Tag,Held by,Service\nP-910,foot,Whey\nP-911,hanging,Brine\n';

/** A set that cannot be entered, for the example of a refusal. */
export const WRONG = { tag: 'P-900', mounting: 'hung', load: { shaftKw: -1 }, colour: 'red' };
