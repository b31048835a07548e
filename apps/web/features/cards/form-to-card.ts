import type { CardBody } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import { readNumber, readScaled } from '../events/read-number';
import { type CardForm, CONDITION_NAMES, type ReadingForm } from './card-form';
import { linesOf, looksOf } from './look-lines';
import { COUNTER_UNITS, SECONDS_IN_MINUTE } from './units';

/**
 * What is sent for a card as it stands in its form. Text that is no number becomes NaN, which the contract refuses at
 * its field. `before` is the card as it was, so that its looks keep their ids and triggers still know it; null for a new one. A date means its
 * beginning in UTC. What the chosen kind hides is left out: a job has no looks, a round fits no new part.
 */
export function formToCard(form: CardForm, before: Pick<JobCard, 'looks' | 'starterId'> | null): CardBody {
  return {
    kind: form.kind,
    starterId: before?.starterId ?? null,
    name: form.name,
    place: form.place,
    intervals: form.limits.map(({ counter, every, tolerance }) => ({
      counter,
      every: readWhole(every, COUNTER_UNITS[counter].factor),
      tolerance: readWhole(tolerance || '0', COUNTER_UNITS[counter].factor),
    })),
    dateLimit: form.dueDate === '' ? null : { dueAt: Date.parse(form.dueDate) / 1000 },
    conditionFactors: readConditions(form),
    combineConditions: form.combineConditions,
    seconds: readWhole(form.minutes, SECONDS_IN_MINUTE),
    people: readNumber(form.people),
    leastServiceSeconds: readWhole(form.leastServiceMinutes || '0', SECONDS_IN_MINUTE),
    remoteAllowed: form.remoteAllowed,
    fitsNewPart: form.kind === 'job' && form.fitsNewPart,
    looks: form.kind === 'round' ? looksOf(form.looks, before?.looks ?? []) : [],
    readings: readReadings(form.readings),
    needsSignature: form.needsSignature,
    caution: form.caution,
    tools: linesOf(form.tools),
    instruction: form.instruction,
  };
}

/** Part metres and part seconds are rounded; pieces are not, since half a service is a slip. */
function readWhole(text: string, factor: number): number {
  const scaled = readScaled(text, factor);
  return factor === 1 ? scaled : Math.round(scaled);
}

function readConditions({ conditions }: CardForm): CardBody['conditionFactors'] {
  const factors: CardBody['conditionFactors'] = {};
  for (const name of CONDITION_NAMES) {
    const percent = conditions[name].trim();
    if (percent !== '') factors[name] = 1000 + readScaled(percent, 10);
  }
  return factors;
}

function readReadings(readings: readonly ReadingForm[]): CardBody['readings'] {
  const taken = new Set(readings.map((reading) => reading.readingId));
  return readings.map((reading) => {
    const decimals = readNumber(reading.decimals);
    const limit = (text: string) => (text.trim() === '' ? null : readScaled(text, 10 ** decimals));
    return {
      id: reading.readingId || newReadingId(taken),
      name: reading.name,
      kind: reading.kind,
      unit: reading.unit,
      decimals,
      positions: reading.positions.split(/[\s,;]+/).filter((position) => position !== ''),
      low: limit(reading.low),
      high: limit(reading.high),
      required: reading.required,
    };
  });
}

function newReadingId(taken: Set<string>): string {
  let number = 1;
  while (taken.has(`reading-${number}`)) number += 1;
  taken.add(`reading-${number}`);
  return `reading-${number}`;
}
