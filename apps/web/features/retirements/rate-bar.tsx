import type { RetirementFigures } from '@halfshaft/contract';
import { RangeBar } from '@/components/range-bar';
import { rangeInWords, rateInWords } from './figures-in-words';

type Rate = RetirementFigures['figures']['rates']['all'];

/** Where the drawing of some rates ends, so that all of them fit. */
export function topOfRates(rates: readonly Rate[]): number {
  return Math.max(0, ...rates.map(({ perThousand }) => perThousand?.bounds.high ?? 0)) || 1;
}

/** "2.5 (0.5 to 7.2)", drawn below. */
export function RateBar({ rate, top }: { rate: Rate; top: number }) {
  if (rate.perThousand === null) return 'nothing driven';
  const { rate: value, bounds } = rate.perThousand;
  return (
    <RangeBar value={value} low={bounds.low} high={bounds.high} top={top}>
      {rateInWords(rate)} ({rangeInWords(rate)})
    </RangeBar>
  );
}
