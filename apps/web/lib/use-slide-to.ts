import { type RefObject, useEffect } from 'react';

/**
 * Slides a part that scrolls sideways so that this place (in its own pixels) stands in its middle, once, when the place
 * becomes known. Afterwards whoever slides it decides.
 */
export function useSlideTo(element: RefObject<HTMLElement | null>, x: number | null): void {
  const isKnown = x !== null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a place that moves with the clock must not pull the line back
  useEffect(() => {
    const scroller = element.current;
    if (scroller === null || x === null) return;
    scroller.scrollLeft = x - scroller.clientWidth / 2;
  }, [element, isKnown]);
}
