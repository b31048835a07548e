import { penaltyRules } from '@halfshaft/contract';
import type { Itinerary } from '@halfshaft/itinerary';

/** The contract's rules, held to the controls of one itinerary: a main control that is misspelt would never count. */
export function penaltyRulesAt(itinerary: Itinerary) {
  const names = itinerary.points.flatMap((point) => (point.kind === 'control' ? [point.id] : []));
  return penaltyRules.superRefine(({ mainControls }, problems) => {
    for (const name of mainControls ?? []) {
      if (names.includes(name)) continue;
      const message = `${name} is no control of this itinerary. Its controls are ${names.join(', ')}.`;
      problems.addIssue({ code: 'custom', path: ['mainControls'], message });
    }
  });
}
