import type { Counter } from './model';

/** [one, several]; the words that stand after the number. */
const PIECES: Record<'stages' | 'services' | 'days' | 'events', [string, string]> = {
  stages: ['stage', 'stages'],
  services: ['service', 'services'],
  days: ['day', 'days'],
  events: ['event', 'events'],
};

/**
 * An amount on a counter as a mechanic says it.
 *
 * @example
 * amountInWords('stageMetres', 60_000) // '60 stage km'
 * amountInWords('services', 1) // '1 service'
 */
export function amountInWords(counter: Counter, amount: number): string {
  switch (counter) {
    case 'stageMetres':
      return `${decimal(amount, 1000)} stage km`;
    case 'totalMetres':
      return `${decimal(amount, 1000)} km`;
    case 'engineSeconds':
      return engineTime(amount);
    default:
      return `${amount} ${PIECES[counter][amount === 1 ? 0 : 1]}`;
  }
}

/** Hours where they come out with one decimal at most, else minutes, else seconds: never a rounded limit. */
function engineTime(seconds: number): string {
  if (seconds % 360 === 0) return plural(decimal(seconds, 3600), 'engine hour');
  if (seconds % 60 === 0) return plural(decimal(seconds, 60), 'engine minute');
  return plural(String(seconds), 'engine second');
}

function plural(number: string, word: string): string {
  return `${number} ${word}${number === '1' ? '' : 's'}`;
}

/** Exact: both uses divide by a number whose quotient has few decimals. */
function decimal(amount: number, unit: number): string {
  return String(amount / unit);
}
