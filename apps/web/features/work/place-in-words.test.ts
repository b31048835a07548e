import { describe, expect, it } from 'vitest';
import { placeInWords } from './place-in-words';

describe('placeInWords', () => {
  it('names a place of the car plan and leaves other words alone', () => {
    expect(placeInWords('frontLeft')).toBe('Front left');
    expect(placeInWords('behind the seat')).toBe('behind the seat');
  });
});
