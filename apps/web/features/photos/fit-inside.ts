export interface Size {
  width: number;
  height: number;
}

/**
 * The size of a picture made so small that its longest side is `side`, its shape kept; never larger than it is.
 *
 * @example
 * fitInside({ width: 4000, height: 3000 }, 1600) // { width: 1600, height: 1200 }
 */
export function fitInside({ width, height }: Size, side: number): Size {
  const scale = Math.min(1, side / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
}
