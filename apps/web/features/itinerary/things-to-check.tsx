import type { ItineraryText } from '@halfshaft/contract';
import type { ItineraryProblem } from '@halfshaft/itinerary';
import { useMemo } from 'react';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { checkText } from './check-text';

/** What was told of an itinerary and did not stop its saving: a saved one is read again, so nothing told is lost. */
export function useRemarks(text: ItineraryText): readonly ItineraryProblem[] {
  return useMemo(() => {
    const checked = checkText(text);
    return checked.state === 'good' ? checked.warnings : [];
  }, [text]);
}

/** Says on the page of the event that something in its itinerary is still to be looked at. */
export function ThingsToCheck({ text, href }: { text: ItineraryText; href: string }) {
  const { length: count } = useRemarks(text);
  if (count === 0) return null;
  return (
    <Notice
      kind="warning"
      title={
        count === 1 ? 'One thing to check in the itinerary' : `${count} things to check in the itinerary`
      }
    >
      <p>It was saved as it stands. Hold it beside the printed one before the event.</p>
      <LinkButton href={href}>Check the itinerary</LinkButton>
    </Notice>
  );
}
