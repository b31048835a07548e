import { describe, expect, it } from 'vitest';
import { linesOf, looksOf } from './look-lines';

const before = [
  { id: 'tyres', words: 'tyres: cuts' },
  { id: 'rims', words: 'rims not bent' },
  { id: 'arms', words: 'arms straight' },
];

describe('linesOf', () => {
  it('drops empty lines and white space around', () => {
    expect(linesOf(' torch \n\n gauge\r\n')).toEqual(['torch', 'gauge']);
  });
});

describe('looksOf', () => {
  it('gives the same looks back when nothing was changed', () => {
    expect(looksOf('tyres: cuts\nrims not bent\narms straight', before)).toEqual(before);
  });

  it('keeps the ids of looks that were moved or stand behind a new one', () => {
    expect(looksOf('arms straight\nhoses\ntyres: cuts', before)).toEqual([
      { id: 'arms', words: 'arms straight' },
      { id: 'rims', words: 'hoses' },
      { id: 'tyres', words: 'tyres: cuts' },
    ]);
  });

  it('keeps the id of a look whose words were changed', () => {
    expect(looksOf('tyres: cuts\nrims clean inside\narms straight', before)[1]).toEqual({
      id: 'rims',
      words: 'rims clean inside',
    });
  });

  it('never gives two looks one id, even where two lines say the same', () => {
    const looks = looksOf('play\nplay\nlook', [{ id: 'look-1', words: 'play' }]);
    expect(looks.map((look) => look.id)).toEqual(['look-1', 'look-2', 'look-3']);
  });

  it('does not change what it is given', () => {
    const frozen = Object.freeze(before.map((look) => Object.freeze({ ...look })));
    looksOf('a\nb', frozen);
    expect(frozen).toEqual(before);
  });
});
