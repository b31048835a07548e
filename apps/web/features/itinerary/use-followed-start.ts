import { useEffect, useRef } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { type ItineraryForm, isSameForm } from './itinerary-form';

/**
 * Lets a form follow the saved itinerary when another version arrives: an untouched form shows it at once, one that was
 * typed into keeps what was typed and only starts from it when told to start afresh.
 */
export function useFollowedStart(
  form: UseFormReturn<ItineraryForm>,
  start: ItineraryForm,
  onSameAsStart: () => void,
): void {
  const followed = useRef(start);

  useEffect(() => {
    if (isSameForm(followed.current, start)) return;
    const untouched = isSameForm(form.getValues(), followed.current);
    followed.current = start;
    form.reset(start, { keepValues: !untouched });
    if (isSameForm(form.getValues(), start)) onSameAsStart();
  }, [form, start, onSameAsStart]);
}
