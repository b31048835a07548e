import { describe, expect, it } from 'vitest';
import { placesOfCar } from './places-of-car';
import { readStartList } from './read-start-list';

const list = (number: number, section: number, text: string) => ({
  number,
  section,
  starters: readStartList(text, section).starters,
});

describe('placesOfCar', () => {
  it('puts the lists of the sections together', () => {
    const lists = [list(1, 1, '14 9\n7 2'), list(2, 3, '14 4')];
    expect([...placesOfCar(lists, '14')]).toEqual([
      [1, 9],
      [3, 4],
    ]);
    expect([...placesOfCar(lists, ' 7 ')]).toEqual([[1, 2]]);
  });

  it('goes by the newest list of a section, in whatever order they come', () => {
    const lists = [list(3, 1, '14 10'), list(1, 1, '14 9\n7 2')];
    expect([...placesOfCar(lists, '14')]).toEqual([[1, 10]]);
    expect([...placesOfCar(lists, '7')]).toEqual([]);
  });

  it('takes a row that names its section, and of two lists the newer', () => {
    expect([...placesOfCar([list(1, 1, '14 9\n14 6 2'), list(2, 2, '14 5')], '14')]).toEqual([
      [1, 9],
      [2, 5],
    ]);
  });

  it('knows nothing of a car that is on no list', () => {
    expect([...placesOfCar([list(1, 1, '114 9')], '14')]).toEqual([]);
    expect([...placesOfCar([], '14')]).toEqual([]);
  });
});
