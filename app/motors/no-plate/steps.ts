/** The walk, in the order in which a person does it. Every step may be left out. */
export const STEPS = [
  { id: 'look', title: 'Look first' },
  { id: 'feet', title: 'Feet' },
  { id: 'shaft', title: 'Shaft' },
  { id: 'face', title: 'Face' },
  { id: 'leads', title: 'Leads' },
  { id: 'speed', title: 'Speed' },
  { id: 'ran', title: 'While it ran' },
  { id: 'outside', title: 'Outside and mass' },
  { id: 'found', title: 'What is known' },
] as const;
export type StepId = (typeof STEPS)[number]['id'];

/** What a step tells, and what to mind before it is done. A sentence, or one with the clause it rests on. */
export const STEP_WORDS: Readonly<Record<StepId, { tells: readonly string[]; mind: readonly string[] }>> = {
  look: {
    tells: [
      'A plate under paint and grease, or a second one in the terminal box.',
      'A number stamped in a foot, the frame or the end of the shaft.',
      'The paper of the pump, the drawing of the starter, the fuse list, the drive’s menu: the plate is often written there.',
      'The same motor on the next pump.',
      'Each step keeps what you typed in this page’s address: it can be sent to whoever goes on.',
    ],
    mind: [
      'Before hands go near it: isolate, lock off and prove dead, second feeds too (heater, brake, control). A drive’s DC link needs its time.',
      'The pump can turn it: close valves and relieve pressure. It may be hot.',
    ],
  },
  feet: {
    tells: [
      'The height gives the number of the frame. NEMA: its first two digits are four times the inches, 184 stands 18/4 = 4 1/2 in high. IEC: the millimetres themselves, 112M. (NEMA MG 1-2016 4.2.1; IEC 60072-1)',
      'The holes along tell 182 from 184, and 132S from 132M.',
    ],
    mind: ['Rust and paint add up: scrape where the tape lies. Shims are not part of the height.'],
  },
  shaft: {
    tells: [
      'It tells the generations of one height apart: 184T has 1 1/8 in, the older 184 7/8 in; 284T has a long shaft, 284TS a short one. (NEMA MG 1-2016 4.4.1)',
      'It tells inches from millimetres, when it is read well enough.',
    ],
    mind: ['Take the guard off only while it is locked off. A shaft worn under a hub is measured beside the wear.'],
  },
  face: {
    tells: [
      'Threaded holes are a NEMA C face or an IEC FT, holes that go through a NEMA D face or an IEC FF. Pitch circle and spigot name which.',
      'A long shaft with a thread or a groove and a face is a pump shaft (JM, JP): it takes only its own kind.',
    ],
    mind: ['A motor held by its face alone hangs on these bolts: leave them in while you measure.'],
  },
  leads: {
    tells: ['How many leads come out of the winding tells at how many voltages it can run, and how it can be started.'],
    mind: [
      'A competent person opens the box, to local codes, after proving it dead. Photograph the connection and its links before anything is moved.',
    ],
  },
  speed: {
    tells: ['The speed under load tells the poles, and they bound power, torque and, on larger IEC frames, the shaft.'],
    mind: [
      'By a stroboscope or a reflecting mark, guard on, nobody near the coupling. A stroboscope also stands still at a half and a third of the speed: come down from above to the first single mark.',
      'On a drive, take the hertz that it shows at that moment.',
    ],
  },
  ran: {
    tells: ['What the load took, not what the motor may carry. Volts times amps bounds the power that came out.'],
    mind: ['Only a competent person measures in an open panel. Write down what was noted before it failed.'],
  },
  outside: {
    tells: [
      'How it is cooled tells the least that the enclosure keeps out; the digits of its IP code are not seen.',
      'The mass is needed to lift it, and to compare it with a catalogue.',
    ],
    mind: ['Weigh it on the hook of a crane scale, lifted as it will be lifted. An eyebolt lifts the motor alone.'],
  },
  found: { tells: [], mind: [] },
};

export const stepOf = (asked: unknown): StepId => STEPS.find(({ id }) => id === asked)?.id ?? 'look';
export const indexOf = (step: StepId): number => STEPS.findIndex(({ id }) => id === step);
