import { type RefObject, useEffect, useRef, useState } from 'react';

/** The width an element has on the screen, in whole pixels; null until it has been measured. */
export function useElementWidth<Kind extends HTMLElement>(): [RefObject<Kind | null>, number | null] {
  const element = useRef<Kind>(null);
  const [width, setWidth] = useState<number | null>(null);

  useEffect(() => {
    const measured = element.current;
    if (measured === null) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.floor(entry.contentRect.width));
    });
    observer.observe(measured);
    return () => observer.disconnect();
  }, []);

  return [element, width];
}
