/** The documented example of what `assess` is asked, key for key, as a text. The plates are invented. */
const EXAMPLE = `{ "asOf": "2026-11-25",
  "set": {
    "tag": "P-101", "mounting": "foot",
    "shaftDirection": "horizontal",
    "rotation": "either",
    "failed": null,
    "seat": { "shaftHeightMm": null, "holesAcrossMm": null, "holesAlongMm": null, "boltMm": null, "holeToShaftEndMm": null, "face": null },
    "coupling": { "type": "coupling",
      "input": "hub",
      "ratio": 1, "efficiencyPct": null,
      "hub": { "boreMm": null, "keyWidthMm": null, "bushed": false, "reboreToMm": 48, "sleeve": true, "replaceable": true, "lengthMm": 60 },
      "quill": { "depthMm": null, "bushing": false },
      "gapMm": null, "gapMinMm": null, "gapMaxMm": null, "maxTorqueNm": null,
      "sheave": { "pitchDiameterMm": 150, "changeable": true }, "takeUpMm": null },
    "base": { "shimLimitMm": 6, "shimsPresentMm": 1.5, "slotting": false, "transitionBase": true,
      "maxLengthMm": null, "maxMassKg": null, "cableEntry": "right" },
    "supply": { "phases": 3, "volts": 480, "hertz": 60, "measuredVolts": null, "unbalancePct": null,
      "start": "direct", "directAllowed": null, "softStartLimitPct": null,
      "overloadMinA": 9, "overloadMaxA": 15, "overloadIn": "line",
      "contactorA": 25, "cableA": 28, "instantaneousTripA": null, "capacitorKvar": null,
      "drive": { "ratedA": 14, "overloadPct": 150, "outputVolts": null, "baseHertz": null, "minHertz": 20, "maxHertz": 60, "cableM": null, "filter": false } },
    "load": { "kind": "constant-torque",
      "shaftKw": 3.1, "atPumpRpm": 350, "maxPumpRpm": 420, "flowTolerancePct": 5, "breakawayPct": 150, "staticHeadPct": null },
    "surroundings": { "ip": "IP55", "washdown": true, "ambientC": 40, "altitudeM": 200, "classification": null },
    "needs": ["thermistor"] },
  "candidates": [ { "id": "M-0412", "kind": "cage",
    "frame": "184TC", "mounting": "IM B35",
    "phases": 3, "poles": 4, "leads": 9, "winding": null,
    "ratings": [ { "volts": 460, "voltsMin": null, "voltsMax": null, "hertz": 60, "hp": 5, "rpm": 1750, "amps": 6.6,
                   "connection": "star", "pf": 0.82, "efficiencyPct": 89.5, "serviceFactor": null } ],
    "serviceFactor": 1.15, "design": "B", "codeLetter": "J", "lockedRotorPct": null, "breakdownPct": null,
    "enclosure": "TEFC", "ip": "IP55", "insulation": "F", "ambientC": 40, "duty": "S1",
    "driveDuty": "none", "constantTorqueRange": 10, "maxRpm": null,
    "terminalBox": "right", "rotation": "either", "washdown": "none",
    "classification": null, "has": ["thermistor"], "brake": { "torqueNm": null, "volts": null },
    "massKg": 41, "lengthMm": 390,
    "measured": { "shaftHeightMm": null, "holesAcrossMm": null, "holesAlongMm": null, "holeMm": null, "holeToShoulderMm": null,
      "shaftDiameterMm": null, "shaftLengthMm": null, "keyWidthMm": null, "pitchCircleMm": null, "spigotMm": null, "faceDiameterMm": null },
    "spare": { "shelvedOn": null, "testedOn": null, "insulationMohm": null } } ] }`;

/** A key or a place in a list, from the outside in. */
export type Path = readonly (string | number)[];

/** JSON as it is written: what a contract says of a key does not depend on what its value is. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** The example, with the failed motor told: it is built like the candidate, without a face. */
export function example(): Json {
  const whole = JSON.parse(EXAMPLE);
  const [candidate] = whole.candidates;
  whole.set.failed = { ...structuredClone(candidate), id: 'M-0007', frame: '184T', mounting: null };
  return whole;
}

/** The example as printed, with no plate to read. */
export const printed = (): Json => JSON.parse(EXAMPLE);

/** `whole` with the value at `path` changed; `undefined` takes the key away. */
export function changed(whole: Json, path: Path, value: Json | undefined): Json {
  const copy = structuredClone(whole);
  const last = path.at(-1);
  const group = path.slice(0, -1).reduce<Json | undefined>(inside, copy);
  if (last === undefined || group === null || typeof group !== 'object')
    throw new Error(`nothing stands at ${path.join('.')}`);
  if (value === undefined) Reflect.deleteProperty(group, last);
  else Object.defineProperty(group, last, { value, enumerable: true, configurable: true, writable: true });
  return copy;
}

/** What stands at a key of a group or a place of a list. */
export function inside(at: Json | undefined, key: string | number): Json | undefined {
  if (at === null || typeof at !== 'object' || at === undefined) return undefined;
  return Array.isArray(at) ? at[Number(key)] : at[key];
}

/** Every place of the JSON that is a key of a group, outside first. */
export function keysOf(at: Json, path: Path = []): Path[] {
  if (at === null || typeof at !== 'object') return [];
  const entries = Array.isArray(at) ? at.map((one, i) => [i, one] as const) : Object.entries(at);
  return entries.flatMap(([key, one]) => [
    ...(Array.isArray(at) ? [] : [[...path, key]]),
    ...keysOf(one, [...path, key]),
  ]);
}
