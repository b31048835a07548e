import type { Trigger } from '../triggers/model';

/** Per mille of "as wet as it gets" from which other tyres are asked for. Common practice, no source. */
const WET = 300;
const ANY_DARKNESS = 1;
const TAKES_WHEELS_OFF = [
  'wheels-off',
  'tyre-change',
  'wet-tyres',
  'dry-tyres',
  'front-pads',
  'rear-pads',
  'discs',
  'bleed-brakes',
  'hub-play',
  'wheel-change',
];

/**
 * What calls for starter cards beside their intervals, as far as such cards are there. Every call returns fresh objects.
 * Common practice, no source.
 *
 * @param fittedCardIds cards that fit a new part: something new settles or weeps in its first stage
 * @example
 * triggersAmong(new Set(['starter:bleed-brakes']), []).find((trigger) => trigger.id === 'soft-pedal')
 */
export function triggersAmong(there: ReadonlySet<string>, fittedCardIds: readonly string[]): Trigger[] {
  const ids = (names: readonly string[]) =>
    names.map((name) => `starter:${name}`).filter((id) => there.has(id));
  return [...incidentTriggers(ids), ...workTriggers(ids, fittedCardIds), ...stageTriggers(ids)];
}

type Ids = (names: readonly string[]) => string[];

function incidentTriggers(ids: Ids): Trigger[] {
  const incident = (
    id: string,
    codes: Extract<Trigger, { kind: 'incident' }>['codes'],
    cards: string[],
    times = 1,
  ): Trigger => ({ kind: 'incident', id, codes, times, cardIds: ids(cards) });
  return [
    incident('off-or-hit', ['off', 'contact'], ['after-an-off', 'geometry']),
    incident('pulls-aside', ['pullsAside'], ['geometry', 'hub-play']),
    incident('hard-landing', ['hardLanding'], ['after-a-hard-landing', 'geometry']),
    incident('ford', ['ford'], ['after-a-ford']),
    // Water finds its way in by the second one.
    incident('second-ford', ['ford'], ['throttle', 'differential-oil', 'hub-play'], 2),
    incident('puncture', ['puncture'], ['wheel-change', 'after-a-puncture']),
    incident('ran-hot', ['hot'], ['cooling-pressure-test']),
    incident('soft-pedal', ['softPedal'], ['bleed-brakes']),
    incident('electrics', ['electrics'], ['charge-with-lamps', 'loom-and-faults']),
    incident('fuel-smell', ['fuelSmell'], ['fuel-smell']),
  ];
}

function workTriggers(ids: Ids, fittedCardIds: readonly string[]): Trigger[] {
  const jobDone = (
    id: string,
    after: string[],
    cards: string[],
    where: Extract<Trigger, { kind: 'jobDone' }>['where'],
  ): Trigger => ({ kind: 'jobDone', id, afterCardIds: ids(after), cardIds: ids(cards), where });
  return [
    jobDone('nuts-after-wheel-off', TAKES_WHEELS_OFF, ['wheel-nuts'], 'service'),
    jobDone('nuts-at-first-halt', TAKES_WHEELS_OFF, ['wheel-nuts-again'], 'firstHalt'),
    jobDone('pressures-at-first-halt', ['tyre-pressures'], ['pressures-before-stage'], 'firstHalt'),
    jobDone('charge-after-lamps-on', ['night-lamps'], ['charge-with-lamps'], 'service'),
    {
      kind: 'newlyFitted',
      id: 'new-part',
      fittedCardIds: [...fittedCardIds],
      afterStages: 1,
      cardIds: ids(['look-at-new-part']),
    },
    { kind: 'temporaryRepair', id: 'temporary-repair', cardIds: [] },
  ];
}

function stageTriggers(ids: Ids): Trigger[] {
  const dark: Trigger = {
    kind: 'nextConditions',
    id: 'dark-stages',
    condition: 'night',
    least: ANY_DARKNESS,
    onCardIds: ids(['night-lamps']),
    offCardIds: ids(['night-lamps-off']),
    offWhen: 'noneLeft',
  };
  const wetTyres = ids(['wet-tyres']);
  if (wetTyres.length === 0) return [dark];
  const wet: Trigger = {
    kind: 'nextConditions',
    id: 'wet-stages',
    condition: 'water',
    least: WET,
    onCardIds: wetTyres,
    offCardIds: ids(['dry-tyres']),
    offWhen: 'noneBeforeNextChance',
  };
  return [dark, wet];
}
