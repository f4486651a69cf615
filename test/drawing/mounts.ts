import type { Mount } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';
import type { Face } from '@/lib/standards/dimension';

/** Nothing known of a motor but its name. */
export const nothingKnown = (name: string): Mount => ({
  name,
  feet: null,
  heightMm: null,
  acrossMm: null,
  alongMm: null,
  acrossOthersMm: [],
  alongOthersMm: [],
  footHoleMm: null,
  toShoulderMm: null,
  toShaftEndMm: null,
  shaftDiameterMm: null,
  shaftLengthMm: null,
  keyWidthMm: null,
  face: null,
  terminalBox: null,
});

/** 184T as NEMA MG 1 4.4.1 prints it in inches: D 4.5, 2E 7.5, 2F 5.5, BA 2.75, N-W 2.75, U 1.125, key 0.25. */
export const of184T: Mount = {
  ...nothingKnown('M-OUT'),
  feet: true,
  heightMm: 114.3,
  acrossMm: 190.5,
  alongMm: 139.7,
  footHoleMm: 10.414,
  toShoulderMm: 69.85,
  toShaftEndMm: 139.7,
  shaftDiameterMm: 28.575,
  shaftLengthMm: 69.85,
  keyWidthMm: 6.35,
};

/** 112M as IEC 60072-1 prints it in mm: H 112, A 190, B 140, C 70, K 12, D 28, E 60, F 8. */
export const of112M: Mount = {
  ...nothingKnown('M-IN'),
  feet: true,
  heightMm: 112,
  acrossMm: 190,
  alongMm: 140,
  footHoleMm: 12,
  toShoulderMm: 70,
  toShaftEndMm: 130,
  shaftDiameterMm: 28,
  shaftLengthMm: 60,
  keyWidthMm: 8,
};

/** FF215 as IEC 60072-1 prints it: M 215, N 180, P 250, four holes of 14.5. */
export const ff215: Face = {
  name: 'FF215',
  kind: 'FF',
  pitchCircleMm: 215,
  spigotMm: 180,
  outsideMm: 250,
  holes: 4,
  hole: { throughMm: 14.5 },
  shoulderToFaceMm: 0,
  optional: false,
  status: 'published',
  cite: 'IEC 60072-1',
};

export const facts: MountFacts = {
  together: 'holes',
  shimsPresentMm: 1.5,
  hub: { lengthMm: 60, boreMm: 28.575 },
  boltMm: 8,
  work: ['shims'],
  act: [],
  unit: 'mm',
};
