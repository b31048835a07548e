import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workshopList } from './workshop-list';

const job = (place: string, name = place) => ({ place, name });
const gist = (...jobs: ReturnType<typeof job>[]) =>
  workshopList(jobs).map(
    ({ access, jobs: group }) => `${access}: ${group.map(({ name }) => name).join(', ')}`,
  );

describe('workshopList', () => {
  it('opens each access once, the car up first', () => {
    expect(gist(job('boot'), job('rearLeft'), job('engineBay'), job('underCar'), job('frontLeft'))).toEqual([
      'wheelsOff: frontLeft, rearLeft',
      'underneath: underCar',
      'engineBay: engineBay',
      'boot: boot',
    ]);
  });

  it('keeps the order given at one place', () => {
    expect(gist(job('cockpit', 'late'), job('cockpit', 'early'))).toEqual(['cockpit: late, early']);
  });

  it('puts what has no one place last', () => {
    expect(gist(job('wholeCar'), job('under the left lamp'), job('body'))).toEqual([
      'body: body',
      'anywhere: wholeCar, under the left lamp',
    ]);
    expect(gist()).toEqual([]);
  });

  it('loses nothing and says nothing twice', () => {
    const places = fc.constantFrom(
      'allCorners',
      'frontRight',
      'underCar',
      'boot',
      'body',
      'wholeCar',
      'lamp',
    );
    fc.assert(
      fc.property(fc.array(places), (all) => {
        const jobs = all.map((place, index) => ({ place, index }));
        const listed = workshopList(jobs).flatMap((group) => group.jobs);
        expect(listed.map(({ index }) => index).sort((a, b) => a - b)).toEqual(
          jobs.map(({ index }) => index),
        );
      }),
    );
  });
});
