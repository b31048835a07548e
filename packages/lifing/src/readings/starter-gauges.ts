/** A reading of the starter cards and how it is judged where it is not simply held against its limits. */
export interface StarterGauge {
  /** Cards it is read with. */
  readWith: readonly string[];
  reading: StarterReading;
  /** The card that fits a new part, if the car has it. */
  remedy: string;
  /** What that card reads of the new part; null when nothing. */
  whenNew: StarterReading | null;
  /** A new tyre on the wheel is a new part as well. */
  isTyre: boolean;
}

/** By its id; by its name on a card that came in from a table, where ids are numbered afresh. */
export interface StarterReading {
  id: string;
  name: string;
}

const NEW_PADS: StarterReading = { id: 'pads', name: 'New pad thickness' };
const PADS: StarterReading = { id: 'pads', name: 'Pad thickness' };
const TREAD: StarterReading = { id: 'tread', name: 'Tread' };
const FRONT = ['starter:front-corners', 'starter:front-left-corner', 'starter:front-right-corner'];
const REAR = ['starter:rear-corners', 'starter:rear-left-corner', 'starter:rear-right-corner'];

/** What wears is read on a round and put right by a job of its own. */
export const STARTER_GAUGES: readonly StarterGauge[] = [
  { readWith: FRONT, reading: PADS, remedy: 'starter:front-pads', whenNew: NEW_PADS, isTyre: false },
  { readWith: REAR, reading: PADS, remedy: 'starter:rear-pads', whenNew: NEW_PADS, isTyre: false },
  {
    readWith: [...FRONT, ...REAR],
    reading: TREAD,
    remedy: 'starter:tyre-change',
    whenNew: null,
    isTyre: true,
  },
];

/** What went in since the level was last right: how fast it falls is judged, not the amount. */
export const STARTER_TOPPED_UP: readonly { readWith: string; reading: StarterReading }[] = [
  { readWith: 'starter:oil-level', reading: { id: 'added', name: 'Oil added' } },
];
