import { type CarHistory, exposuresOf } from '@halfshaft/reliability';
import { carLivesOf, loggedEventOf } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { inLine } from '../../packages/reliability/src/exposure/fixtures';
import { SEASON_PARTS, scriptSeason } from '../../packages/reliability/src/exposure/scripted-season/fixtures';
import { logEvent, seasonCard, seasonQuestions } from './season-log';

const QUESTIONS = seasonQuestions(SEASON_PARTS);
const CARS = Array.from({ length: 60 }, (_, index) => scriptSeason(2026 + index, `car ${index + 1}`));

/** How old parts were at the start is the script's to say: the log of looks knows nothing of it. */
function throughTheLog(history: CarHistory): CarHistory {
  const repairs = new Map<string, string>();
  const events = history.events.map((event) => {
    const { itinerary, state } = logEvent(event, SEASON_PARTS, repairs);
    return loggedEventOf(state, { eventId: event.eventId, itinerary, isOver: true }, event.eventId);
  });
  const questions = QUESTIONS.map((question) => ({
    ...question,
    counter: 'stageMetres' as const,
    shows: 'whenLooked' as const,
  }));
  const lives = carLivesOf({ carId: history.carId, events, carried: {} }, questions);
  const carried = history.carried.map((age) => ({ ...age, cardId: seasonCard(age.cardId, age.position) }));
  return { ...lives, ranBefore: history.ranBefore, carried };
}

it('gives every exposure of a scripted season of 60 cars, played into the log by the real actions', () => {
  let checked = 0;
  for (const { history, lines } of CARS) {
    const logged = throughTheLog(history);
    for (const { cardId, positions } of SEASON_PARTS) {
      const own = QUESTIONS.filter((question) =>
        [cardId, ...positions.map((position) => seasonCard(cardId, position))].includes(question.cardId),
      );
      expect(exposuresOf([logged], own).map(inLine), `${history.carId}, ${cardId}`).toEqual(
        lines.get(cardId),
      );
      checked += lines.get(cardId)?.length ?? 0;
    }
  }
  expect(checked).toBeGreaterThan(1_500);
});

it('counts the way of every event of it to the metre', () => {
  for (const { history } of CARS) {
    const logged = throughTheLog(history);
    const totals = (car: CarHistory) => car.events.map(({ counted }) => counted.stageMetres?.at(-1));
    expect(totals(logged)).toEqual(totals(history));
  }
});
