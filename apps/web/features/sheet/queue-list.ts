import type { JobCard } from '@halfshaft/lifing';
import type { JudgedCard } from '../service/judge-visit';

/** Common practice, no source. */
export const QUEUE_QUESTIONS = [
  'What has changed since the last service: brakes, steering, clutch, gearbox, noise, smell?',
  'Hit, heavy landing, water or puncture: where on the car, on which stage?',
  'Warning lamps? Water and oil temperature, oil pressure?',
  'Fuel left, and litres wanted?',
  'Tyres: which goes where, and at what pressure?',
  'Lamps, wipers, demister, intercom, belts: all well?',
];

const REACHED_STANDING_BY: readonly JobCard['place'][] = ['cockpit', 'body', 'boot', 'wholeCar'];

/**
 * What can be looked at while the car waits outside the control: looks of rounds that are due and need nobody under the
 * car, no wheel off and no bonnet up; single jobs only where they ask for no tool and no second person. What a card's
 * place and tools say decides it (common practice, no source); whether it is allowed there, the event's regulations.
 */
export function queueLooks(cards: readonly JudgedCard[]): { name: string; looks: string[] }[] {
  return cards
    .filter(({ judged }) => judged.verdict !== 'leave')
    .filter(({ card }) => REACHED_STANDING_BY.includes(card.place))
    .filter(({ card }) => card.kind === 'round' || (card.tools.length === 0 && card.people === 1))
    .filter(({ card }) => !card.needsSignature)
    .map(({ card }) => ({ name: card.name, looks: card.looks.map(({ words }) => words) }));
}
