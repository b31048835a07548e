import { type RefObject, useEffect, useRef } from 'react';

/**
 * After each try to save, unfolds every part of the form that hides a field with a problem and takes the keyboard to
 * the first such field. `tries` is the form's `submitCount`; turn the form's own `shouldFocusError` off, since it
 * cannot reach into a folded part.
 */
export function useFirstProblemFocus(tries: number, hasProblems: boolean): RefObject<HTMLFormElement | null> {
  const form = useRef<HTMLFormElement>(null);
  const seen = useRef(0);

  useEffect(() => {
    if (tries === seen.current || !hasProblems) return;
    seen.current = tries;
    const fields = form.current?.querySelectorAll<HTMLElement>('[aria-invalid="true"]') ?? [];
    for (const field of fields) field.closest('details')?.setAttribute('open', '');
    fields[0]?.focus();
  }, [tries, hasProblems]);

  return form;
}
