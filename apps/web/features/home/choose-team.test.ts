import { describe, expect, it } from 'vitest';
import { chooseTeam, type MyTeam } from './choose-team';

const team = (teamId: string): MyTeam => ({
  teamId,
  name: teamId,
  role: 'mechanic',
  personId: 'p',
  eventId: null,
});
const [one, two] = [team('one'), team('two')];

describe('chooseTeam', () => {
  it('shows the only team at once, whatever was asked', () => {
    expect(chooseTeam([one], null)).toBe(one);
    expect(chooseTeam([one], 'gone')).toBe(one);
  });

  it('shows the one asked for among several', () => {
    expect(chooseTeam([one, two], 'two')).toBe(two);
  });

  it('leaves the choice open', () => {
    expect(chooseTeam([one, two], null)).toBeNull();
    expect(chooseTeam([one, two], 'gone')).toBeNull();
    expect(chooseTeam([], 'one')).toBeNull();
  });
});
