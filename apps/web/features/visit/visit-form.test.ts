import { describe, expect, it } from 'vitest';
import { emptyVisit, readVisit, type VisitForm } from './visit-form';

const FORM = emptyVisit('2026-06-13', 'Europe/Vienna');
const problemsOf = (own: Partial<VisitForm>) => {
  const read = readVisit({ ...FORM, ...own });
  return read.ok ? {} : read.problems;
};

describe('readVisit', () => {
  it('reads what the form begins with', () => {
    expect(readVisit({ ...FORM, source: 'table', gapMinutes: ' 5 ', people: '3' })).toEqual({
      ok: true,
      visit: {
        drive: 'four',
        surface: 'gravel',
        people: 3,
        startPosition: 1,
        positionsBySection: {},
        itinerary: {
          source: 'table',
          timeZone: 'Europe/Vienna',
          startsOn: '2026-06-13',
          roadTimedFrom: 'stageStart',
          startIntervalSeconds: 60,
          defaultGapSeconds: 300,
          printedFor: 'positionOne',
        },
      },
    });
  });

  it('reads where the car starts again after a regroup, and says which figure is none', () => {
    const read = readVisit({ ...FORM, laterPositions: { s2: '4', s3: ' ' } });
    expect(read).toMatchObject({ ok: true, visit: { positionsBySection: { 2: 4 } } });
    expect(problemsOf({ laterPositions: { s2: 'last' } })).toEqual({
      laterPositions: 'The start position must be a whole number from 1 to 300.',
    });
  });

  it.each([
    ['people', '0', 'The number of people must be a whole number from 1 to 20.'],
    ['people', '', 'The number of people must be a whole number from 1 to 20.'],
    ['startPosition', 'two', 'The start position must be a whole number from 1 to 300.'],
    ['startIntervalSeconds', '5', 'The start interval in seconds must be a whole number from 30 to 600.'],
    ['gapMinutes', '2.5', 'The gap must be a whole number of minutes from 1 to 30.'],
    ['gapMinutes', '31', 'The gap must be a whole number of minutes from 1 to 30.'],
    ['gapMinutes', '', 'The gap must be a whole number of minutes from 1 to 30.'],
    ['startsOn', '', 'Type the first day as year-month-day, such as 2026-06-13.'],
    ['timeZone', 'Mars/North', 'That time zone is not known. Choose one from the list.'],
    ['drive', 'six', 'Choose which wheels are driven.'],
  ] as const)('says of %s %j what is wrong, at that field only', (field, text, sentence) => {
    expect(problemsOf({ [field]: text })).toEqual({ [field]: sentence });
  });
});
