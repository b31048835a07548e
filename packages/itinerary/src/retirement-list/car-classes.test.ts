import { expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { carClasses, recordsOfClass } from './car-classes';
import { readRetirementList } from './read-retirement-list';

const { records } = readRetirementList(
  [
    'Car,Class,What happened,Where,Cause,Back from section',
    '1,R10,finished',
    '2,r 2,finished',
    '3,R2,out for the day,in SS1,time,3',
    '3,,finished',
    '4,,finished',
    '5,R-2,did not start',
  ].join('\n'),
  goodItinerary(TWO_LEGS),
);

it('names each class once, as it was written first', () => {
  expect(carClasses(records)).toEqual(['r 2', 'R2', 'R10']);
});

it('keeps all rows of a car of the class', () => {
  const carsOf = (className: string) => recordsOfClass(records, className).map(({ carNumber }) => carNumber);
  expect(carsOf('r2')).toEqual(['3', '3']);
  expect(carsOf('R 2')).toEqual(['2', '5']);
  expect(carsOf('R9')).toEqual([]);
});
