import { describe, expect, it } from 'vitest';
import { pickKept } from './pick-kept';

const shown = { words: '', minutes: '20', people: ['p1'], urgent: false, password: '' };

describe('pickKept', () => {
  it('gives back what was typed', () => {
    expect(pickKept({ words: 'left front knocks', urgent: true }, shown)).toEqual({
      words: 'left front knocks',
      urgent: true,
    });
  });

  it('drops fields the form no longer has and fields of another type', () => {
    expect(pickKept({ words: 'knock', colour: 'blue', minutes: 20, people: 'p1' }, shown)).toEqual({
      words: 'knock',
    });
  });

  it('never gives back a field that is left out', () => {
    expect(pickKept({ password: 'secret' }, shown, ['password'])).toBeNull();
  });

  it('says nothing was kept when it equals what the form shows', () => {
    expect(pickKept({ words: '', minutes: '20', people: ['p1'] }, shown)).toBeNull();
  });

  it.each([null, 'text', 7, undefined])('takes %j for nothing kept', (stored) => {
    expect(pickKept(stored, shown)).toBeNull();
  });
});
