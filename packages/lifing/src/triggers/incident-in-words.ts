import type { IncidentCode } from './model';

const IN_WORDS: Record<IncidentCode, string> = {
  off: 'off the road',
  contact: 'hit something',
  hardLanding: 'hard landing',
  ford: 'through a ford',
  puncture: 'puncture',
  hot: 'ran hot',
  softPedal: 'soft brake pedal',
  electrics: 'electrics played up',
  fuelSmell: 'smell of fuel',
  pullsAside: 'pulls to one side',
};

/**
 * What happened, as a crew says it.
 *
 * @example
 * incidentInWords('hardLanding') // 'hard landing'
 */
export function incidentInWords(code: IncidentCode): string {
  return IN_WORDS[code];
}
