const HUNDRED = 100;

/**
 * A share in whole per cent.
 *
 * @example
 * percentInWords(0.301) // '30 %'
 */
export function percentInWords(share: number): string {
  return `${Math.round(share * HUNDRED)} %`;
}

/**
 * From one share to another, in whole per cent, for brackets behind a share.
 *
 * @example
 * percentRange({ low: 0.04, high: 0.288 }) // '4 to 29'
 */
export function percentRange({ low, high }: { low: number; high: number }): string {
  return `${Math.round(low * HUNDRED)} to ${Math.round(high * HUNDRED)}`;
}
