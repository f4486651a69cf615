import type { StampedPlate } from './stamped-plate';

/** Plates as makers of NEMA motors stamp them; every figure invented. */
export const nemaPlates: StampedPlate[] = [
  {
    name: 'dual voltage, labels before values',
    text: `FRAME 184TC  HP 5  RPM 1750
VOLTS 230/460  AMPS 13.2/6.6  HZ 60
PH 3  S.F. 1.15  INS CL F  DESIGN B  CODE J
ENCL TEFC  DUTY CONT  AMB 40 C  NEMA NOM EFF 89.5  PF 82`,
    motor: {
      frame: '184TC',
      phases: 3,
      poles: 4,
      serviceFactor: 1.15,
      insulation: 'F',
      design: 'B',
      codeLetter: 'J',
      enclosure: 'TEFC',
      duty: 'S1',
      ambientC: 40,
    },
    ratings: [
      { volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2, efficiencyPct: 89.5, pf: 0.82 },
      { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, efficiencyPct: 89.5, pf: 0.82 },
    ],
  },
  {
    name: 'a range of volts whose currents nobody can put to one voltage',
    text: 'FRAME 182/4T HP 7½ VOLTS 208-230/460\nRPM 1,750 AMPS 20-18.6/9.3\nPH 3 HZ 60',
    motor: { frame: '182/4T', phases: 3, poles: 4 },
    ratings: [
      { voltsMin: 208, voltsMax: 230, hertz: 60, hp: 7.5, rpm: 1750 },
      { volts: 460, hertz: 60, hp: 7.5, rpm: 1750, amps: 9.3 },
    ],
    problems: ['ratings.0.amps'],
  },
  {
    name: 'single-phase, a maker letter before the frame',
    text: 'FRAME L 56HC HP 1/3 VOLTS 115/230 PH 1 RPM 1725 AMPS 6.0/3.0 HZ 60 CODE N CONT 40 C AMB',
    motor: { frame: '56HC', phases: 1, poles: 4, codeLetter: 'N', duty: 'S1', ambientC: 40 },
    ratings: [
      { volts: 115, hertz: 60, hp: 1 / 3, rpm: 1725, amps: 6 },
      { volts: 230, hertz: 60, hp: 1 / 3, rpm: 1725, amps: 3 },
    ],
  },
  {
    name: 'values before units, on one line',
    text: '10 HP 1760 RPM 460 V 60 HZ 3 PH 12.4 A 215T',
    motor: { frame: '215T', phases: 3, poles: 4 },
    ratings: [{ volts: 460, hertz: 60, hp: 10, rpm: 1760, amps: 12.4 }],
  },
  {
    name: 'an old U frame, 2200 V',
    text: 'FRAME 405U\nHP 60  VOLTS 2200\nRPM 1775  CYCLES 60  PHASE 3\nAMPS 15\n40 C AMB',
    motor: { frame: '405U', phases: 3, poles: 4, ambientC: 40 },
    ratings: [{ volts: 2200, hertz: 60, hp: 60, rpm: 1775, amps: 15 }],
  },
  {
    name: 'washdown, painted or stainless steel: not told',
    text: 'FRAME 184JM\nWASHDOWN DUTY\nHP 5 RPM 3500 V 230/460 A 12/6 HZ 60 PH 3',
    motor: { frame: '184JM', phases: 3, poles: 2 },
    ratings: [
      { volts: 230, hertz: 60, hp: 5, rpm: 3500, amps: 12 },
      { volts: 460, hertz: 60, hp: 5, rpm: 3500, amps: 6 },
    ],
    problems: ['washdown'],
  },
  {
    name: 'serial, model and bearings are kept as they stand',
    text: 'MODEL XA7-184\nSER NO 0042-60\nDE BRG 6206\nFRAME 184T HP 5 RPM 1750 V 460 HZ 60 A 6.6',
    motor: { frame: '184T', poles: 4 },
    ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }],
    unread: ['MODEL XA7-184', 'SER NO 0042-60', 'DE BRG 6206'],
  },
  {
    name: 'a speed that no field gives',
    text: 'FRAME 145T HP 2 RPM 1850 V 460 HZ 60 A 2.8 PH 3',
    motor: { frame: '145T', phases: 3 },
    ratings: [{ volts: 460, hertz: 60, hp: 2, amps: 2.8 }],
    problems: ['ratings.0.rpm'],
  },
  {
    name: 'a power without its unit, a figure without a name',
    text: 'POWER 5\n60\nFRAME 184T',
    motor: { frame: '184T' },
    unread: ['60'],
    problems: ['ratings', 'ratings.0.kw'],
  },
  {
    name: 'hp and kW that disagree',
    text: '5 kW HP 7 RPM 1750',
    motor: {},
    ratings: [{ rpm: 1750 }],
    problems: ['ratings.0.kw'],
  },
  {
    name: 'hp and kW that agree are one power',
    text: 'FRAME 184T 5 HP 3.7 kW 1750 RPM 460 V 60 HZ',
    motor: { frame: '184T', poles: 4 },
    ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }],
  },
  {
    name: 'mounting of the terminal box',
    text: 'MTG F-1 HP 5',
    motor: { mounting: 'F-1', terminalBox: 'left' },
    ratings: [{ hp: 5 }],
  },
  {
    name: 'three mountings: which one holds?',
    text: 'MOUNTING IM B35\nMTG F-1\nMOUNTING foot and face',
    motor: { terminalBox: 'left' },
    problems: ['mounting'],
  },
  {
    name: 'drive duty with its range of constant torque',
    text: 'FRAME 256T INVERTER DUTY 10:1 CT\nHP 20 RPM 1765 V 460 HZ 60 A 24.5 MAX RPM 3600',
    motor: { frame: '256T', poles: 4, driveDuty: 'inverter', constantTorqueRange: 10, maxRpm: 3600 },
    ratings: [{ volts: 460, hertz: 60, hp: 20, rpm: 1765, amps: 24.5 }],
  },
  {
    name: 'worn digits are said and never taken',
    text: 'FRAME 184T HP 5 RPM I750 VOLTS 46O HZ 60',
    motor: { frame: '184T' },
    ratings: [{ hertz: 60, hp: 5 }],
    problems: ['ratings.0.rpm', 'ratings.0.volts'],
  },
];
