import type { BringInReport, LookOutcome } from '@halfshaft/contract';

/** "1 car", "2 cars". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/**
 * What bringing a file in would do, as a sentence.
 *
 * @example
 * lookInWords(look) // 'Everything in it is here already: bringing it in changes nothing.'
 */
export function lookInWords({ fresh, known, people }: LookOutcome): string {
  if (people.length > 0) {
    return 'This server does not know the team yet. Team and event are made here, and you will be its manager here.';
  }
  if (fresh === 0 && known > 0) {
    return 'All of its work is here already. What is new in cards or itinerary, and missing photos, still come in.';
  }
  const here =
    known === 0
      ? ''
      : ` ${counted(known, 'piece')} of work ${known === 1 ? 'is' : 'are'} here already and will not come twice.`;
  return `${counted(fresh, 'piece')} of work ${fresh === 1 ? 'is' : 'are'} new here.${here}`;
}

/** What came of it, in one line. */
export function reportInWords({ came, known, refused }: BringInReport): string {
  const parts = [
    `${counted(came, 'piece')} of work came in`,
    `${known} ${known === 1 ? 'was' : 'were'} here already`,
  ];
  return `${parts.join(', ')}, ${refused.length === 0 ? 'none was refused' : `${counted(refused.length, 'was', 'were')} refused`}.`;
}
