import { describe, expect, it } from 'vitest';
import { lookInWords, reportInWords } from './report-words';

const LOOK = {
  teamId: 't',
  eventId: 'e',
  teamName: 'Team',
  eventName: 'Event',
  madeAt: 0,
  cars: 1,
  entries: 3,
  fresh: 2,
  known: 1,
  people: [],
  pictures: [],
};

describe('what bringing a file in does', () => {
  it('is told before', () => {
    expect(lookInWords(LOOK)).toBe(
      '2 pieces of work are new here. 1 piece of work is here already and will not come twice.',
    );
    expect(lookInWords({ ...LOOK, known: 0, fresh: 1 })).toBe('1 piece of work is new here.');
    expect(lookInWords({ ...LOOK, fresh: 0 })).toMatch(/^All of its work is here already\./);
    expect(lookInWords({ ...LOOK, people: [{ personId: 'p', name: 'Mia', madeTheFile: true }] })).toMatch(
      /you will be its manager here\.$/,
    );
  });

  it('is told afterwards', () => {
    const report = { came: 2, known: 1, refused: [], notes: [] };
    expect(reportInWords(report)).toBe('2 pieces of work came in, 1 was here already, none was refused.');
    expect(reportInWords({ ...report, refused: [{ deed: 'a', why: 'b' }] })).toMatch(/1 was refused\.$/);
  });
});
