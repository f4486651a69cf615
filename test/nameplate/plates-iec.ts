import type { StampedPlate } from './stamped-plate';

/** Plates as makers of IEC motors stamp them, in several languages; every figure invented. */
export const iecPlates: StampedPlate[] = [
  {
    name: 'frame, poles and mounting in one word, letters of both connections behind',
    text: 'HM 100L-4 B35\n3~ 400/690 V Δ/Y 50 Hz\n7,5 kW 14,2/8,2 A\n1450 min⁻¹ cos φ 0,83\nIP 55 Isol. Kl. F',
    motor: { frame: '100L', poles: 4, mounting: 'IM B35', phases: 3, ip: 'IP55', insulation: 'F' },
    ratings: [
      { volts: 400, hertz: 50, kw: 7.5, rpm: 1450, amps: 14.2, connection: 'delta', pf: 0.83 },
      { volts: 690, hertz: 50, kw: 7.5, rpm: 1450, amps: 8.2, connection: 'star', pf: 0.83 },
    ],
    unread: ['HM'],
  },
  {
    name: 'two frequencies in pairs',
    text: '50/60 Hz 1450/1740 min-1 4/4.8 kW 400/460 V 8.1/8.3 A\nIM B3 Baugröße 132 S/M',
    motor: { frame: '132S/M', poles: 4, mounting: 'IM B3' },
    ratings: [
      { volts: 400, hertz: 50, kw: 4, rpm: 1450, amps: 8.1 },
      { volts: 460, hertz: 60, kw: 4.8, rpm: 1740, amps: 8.3 },
    ],
  },
  {
    name: "a maker's type that ends in a frame is read and said",
    text: 'D132S 10 PS 380-420Y/220-240D V 50 Hz 1500 (4P)',
    motor: { frame: '132S', poles: 4 },
    ratings: [
      { voltsMin: 380, voltsMax: 420, hertz: 50, kw: 7.355, rpm: 1500, connection: 'star' },
      { voltsMin: 220, voltsMax: 240, hertz: 50, kw: 7.355, rpm: 1500, connection: 'delta' },
    ],
    problems: ['frame'],
  },
  {
    name: 'beside a named frame the type stays a type',
    text: 'FRAME 112M\nD132S\n4 kW',
    motor: { frame: '112M' },
    ratings: [{ kw: 4 }],
    unread: ['D132S'],
  },
  {
    name: 'a flange beside a frame on one line',
    text: 'FRAME FF265\nIM 3001',
    motor: { frame: 'FF265', mounting: 'IM 3001' },
  },
  {
    name: 'a mounting where the frame should be',
    text: 'FRAME IM 3001\n10 PS',
    motor: { mounting: 'IM 3001' },
    ratings: [{ kw: 7.355 }],
    problems: ['frame'],
  },
  {
    name: 'a frame and a flange in two places',
    text: '184TC 5 HP 1750 RPM 230/460 V 13.2/6.6 A 60 Hz\nFRAME FF265',
    motor: { poles: 4 },
    ratings: [
      { volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 },
      { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 },
    ],
    problems: ['frame'],
  },
  {
    name: 'German labels',
    text: `Leistung 2,2 kW
Drehzahl 1420 1/min
Spannung 230/400 V
Nennstrom 8,6/5,0 A
Frequenz 50 Hz
Schutzart IP55
Bauform IM B3
Baugröße 100L
Wärmekl. F`,
    motor: { frame: '100L', poles: 4, mounting: 'IM B3', ip: 'IP55', insulation: 'F' },
    ratings: [
      { volts: 230, hertz: 50, kw: 2.2, rpm: 1420, amps: 8.6 },
      { volts: 400, hertz: 50, kw: 2.2, rpm: 1420, amps: 5 },
    ],
  },
  {
    name: 'French labels',
    text: '3~ 112M B14 4 kW\nVitesse 1435 tr/min\nTension 230/400 V\nCourant 14.1/8.1 A\nFréquence 50 Hz',
    motor: { frame: '112M', poles: 4, mounting: 'IM B14', phases: 3 },
    ratings: [
      { volts: 230, hertz: 50, kw: 4, rpm: 1435, amps: 14.1 },
      { volts: 400, hertz: 50, kw: 4, rpm: 1435, amps: 8.1 },
    ],
  },
  {
    name: 'Spanish labels',
    text: 'Potencia 3 kW\nVelocidad 2880 rpm\nTensión 400 V\nCorriente 6,1 A\nFrecuencia 50 Hz\nCarcasa 100L',
    motor: { frame: '100L', poles: 2 },
    ratings: [{ volts: 400, hertz: 50, kw: 3, rpm: 2880, amps: 6.1 }],
  },
  {
    name: 'a table of two rows under its headings',
    text: `IEC 132M  IM B3  IP55
V      Hz   kW   min-1  A
400 Δ  50   7.5  1455   14.9
460 Δ  60   8.6  1755   14.7`,
    motor: { frame: '132M', poles: 4, mounting: 'IM B3', ip: 'IP55' },
    ratings: [
      { volts: 400, hertz: 50, kw: 7.5, rpm: 1455, amps: 14.9, connection: 'delta' },
      { volts: 460, hertz: 60, kw: 8.6, rpm: 1755, amps: 14.7, connection: 'delta' },
    ],
  },
  {
    name: 'a row that does not stand under its headings',
    text: '132M\nV Hz kW min-1 A\n400 50 7.5',
    motor: { frame: '132M' },
    unread: ['400 50 7.5'],
    problems: ['ratings'],
  },
  {
    name: 'a letter beside each voltage',
    text: '90L-4 1,5 kW 230 V Δ/400 V Y 50 Hz 1,430 rpm 5,9/3,4 A',
    motor: { frame: '90L', poles: 4 },
    ratings: [
      { volts: 230, hertz: 50, kw: 1.5, rpm: 1430, amps: 5.9, connection: 'delta' },
      { volts: 400, hertz: 50, kw: 1.5, rpm: 1430, amps: 3.4, connection: 'star' },
    ],
  },
  {
    name: 'a power of two readings stays out',
    text: '132M 1,125 kW 400 V 50 Hz 1455 rpm',
    motor: { frame: '132M', poles: 4 },
    ratings: [{ volts: 400, hertz: 50, rpm: 1455 }],
    problems: ['ratings.0.kw'],
  },
  {
    name: 'a plate in watts, with its mass and its ambient',
    text: 'FRAME 71 B14 370 W 230/400 V Δ/Y 50 Hz 1375 rpm 1,9/1,1 A 6,2 kg AMB -20 to +40 °C',
    motor: { frame: '71', mounting: 'IM B14', poles: 4, massKg: 6.2, ambientC: 40 },
    ratings: [
      { volts: 230, hertz: 50, kw: 0.37, rpm: 1375, amps: 1.9, connection: 'delta' },
      { volts: 400, hertz: 50, kw: 0.37, rpm: 1375, amps: 1.1, connection: 'star' },
    ],
  },
  {
    name: 'efficiency class with its figure, duty in minutes',
    text: '160M-4 IE3-92.1% S2-60 min 11 kW 400 V 50 Hz 1470 rpm 20,5 A',
    motor: { frame: '160M', poles: 4, duty: 'S2' },
    ratings: [{ volts: 400, hertz: 50, kw: 11, rpm: 1470, amps: 20.5, efficiencyPct: 92.1 }],
    problems: ['duty'],
  },
];
