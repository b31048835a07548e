import type { JobCard, ReadingSpec } from '@halfshaft/lifing';
import { type CardForm, CONDITION_NAMES, type ReadingForm } from './card-form';
import { COUNTER_UNITS, SECONDS_IN_MINUTE, writeAmount } from './units';

const ISO_DATE_LENGTH = 10;

/** A card as its form shows it: km, hours, minutes, percent. `formToCard` gives the same card back. */
export function cardToForm(card: JobCard): CardForm {
  return {
    name: card.name,
    kind: card.kind,
    place: card.place,
    fitsNewPart: card.fitsNewPart,
    limits: card.intervals.map(({ counter, every, tolerance }) => {
      const { factor, decimals } = COUNTER_UNITS[counter];
      return {
        counter,
        every: writeAmount(every, factor, decimals),
        tolerance: writeAmount(tolerance, factor, decimals),
      };
    }),
    minutes: writeMinutes(card.seconds),
    people: String(card.people),
    looks: card.looks.map((look) => look.words).join('\n'),
    dueDate: card.dateLimit ? writeDate(card.dateLimit.dueAt) : '',
    conditions: writeConditions(card),
    combineConditions: card.combineConditions,
    readings: card.readings.map(writeReading),
    needsSignature: card.needsSignature,
    leastServiceMinutes: writeMinutes(card.leastServiceSeconds),
    remoteAllowed: card.remoteAllowed,
    caution: card.caution,
    tools: card.tools.join('\n'),
    instruction: card.instruction,
  };
}

function writeMinutes(seconds: number): string {
  return writeAmount(seconds, SECONDS_IN_MINUTE, 2);
}

function writeDate(dueAt: number): string {
  return new Date(dueAt * 1000).toISOString().slice(0, ISO_DATE_LENGTH);
}

function writeConditions({ conditionFactors }: JobCard): CardForm['conditions'] {
  const conditions = { dust: '', water: '', rough: '', night: '', jumps: '' };
  for (const name of CONDITION_NAMES) {
    const factor = conditionFactors[name];
    if (factor !== undefined) conditions[name] = writeAmount(factor - 1000, 10, 1);
  }
  return conditions;
}

function writeReading(spec: ReadingSpec): ReadingForm {
  const limit = (value: number | null) =>
    value === null ? '' : writeAmount(value, 10 ** spec.decimals, spec.decimals);
  return {
    readingId: spec.id,
    name: spec.name,
    kind: spec.kind,
    unit: spec.unit,
    decimals: String(spec.decimals),
    positions: spec.positions.join(' '),
    low: limit(spec.low),
    high: limit(spec.high),
    required: spec.required,
  };
}
