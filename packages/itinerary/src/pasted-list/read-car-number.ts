import { excerpt } from '../excerpt';
import type { ListRow } from './list-row';

const CAR_NUMBER_CHARACTERS = 8;

/** The car a row is about; null when it names none or it is too long, which is told. */
export function readCarNumber<Column extends string>({
  row,
  text,
  refuse,
}: ListRow<Column | 'car'>): string | null {
  const cell = text('car');
  if (cell === '') refuse('car', 'car-missing', `Row ${row} has no car number. Type the one on the doors.`);
  else if (cell.length > CAR_NUMBER_CHARACTERS)
    refuse('car', 'car-too-long', `“${excerpt(cell)}” in row ${row} is too long for a car number.`);
  else return cell;
  return null;
}
