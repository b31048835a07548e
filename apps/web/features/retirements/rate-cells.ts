import type { RetirementFigures } from '@halfshaft/contract';
import { growthInWords } from './figures-in-words';
import { rateRows } from './rate-rows';

const DECIMALS = 3;

/** The rates as rows of cells for a file, headings first. */
export function rateCells(figures: RetirementFigures['figures']): string[][] {
  const written = (value: number | undefined) => value?.toFixed(DECIMALS) ?? '';
  const rows = rateRows(figures).map(({ name, rate: { stops, unsure, perThousand }, growth }) => [
    name,
    String(stops),
    String(unsure),
    written(perThousand?.rate),
    written(perThousand?.bounds.low),
    written(perThousand?.bounds.high),
    growthInWords(growth),
  ]);
  return [
    ['Cause', 'Stops', 'Of these unsure', 'Per 1,000 stage km', 'At least', 'At most', 'From event to event'],
    ...rows,
  ];
}
