import type { RetirementFigures } from '@halfshaft/contract';
import { causeInWords } from './cause-words';

type Figures = RetirementFigures['figures'];

export interface RateRow {
  name: string;
  rate: Figures['rates']['all'];
  growth: Figures['growth']['all'];
}

/** All causes together, then each. */
export function rateRows({ rates, growth }: Figures): RateRow[] {
  const growthOf = (cause: string) => growth.causes.find((one) => one.cause === cause)?.growth ?? growth.all;
  return [
    { name: 'All causes', rate: rates.all, growth: growth.all },
    ...rates.causes.map((rate) => ({ name: causeInWords(rate.cause), rate, growth: growthOf(rate.cause) })),
  ];
}
