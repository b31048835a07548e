import { type RefObject, useEffect, useRef } from 'react';

/**
 * Takes the keyboard to the first field with a problem after each try to save, also when that field stands in a part
 * that only just opened. `tries` is the form's `submitCount`; turn the form's own `shouldFocusError` off.
 */
export function useFirstProblemFocus(tries: number, hasProblems: boolean): RefObject<HTMLFormElement | null> {
  const form = useRef<HTMLFormElement>(null);
  const seen = useRef(0);

  useEffect(() => {
    if (tries === seen.current || !hasProblems) return;
    seen.current = tries;
    form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [tries, hasProblems]);

  return form;
}
