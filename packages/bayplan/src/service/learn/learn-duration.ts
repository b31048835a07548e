import { estimateDuration, type ThreePoint } from '../../times/three-point';
import { holdBack } from './hold-back';
import { updateNormal, type Weighed } from './update-normal';

/** A job that was done: how long it took with its whole crew, and who did it. */
export interface TimedJob {
  seconds: number;
  who: string;
}

export interface LearnedDuration {
  /** In seconds. Those of the card while nothing is known. */
  duration: ThreePoint;
  jobs: number;
  people: number;
  /** By how many seconds the usual job now takes longer than the card says; below 0 it is quicker. */
  overrun: number;
  /** For a mechanic: what was seen, in whole minutes. */
  words: string;
}

/** The card counts as much as so many jobs by different people (a choice of ours, no source). */
const CARD_WORTH = 5;
/** How much two jobs by one person have in common (a choice of ours, no source). */
const ALIKE = 0.3;
/** A card with one number for all three says nothing of the spread: then so much of it, up and down, is taken. */
const SUPPOSED_SPREAD = 0.15;
const LEAST_SPREAD = 0.03;

/**
 * What a job takes, learned from jobs done and held to the card's own three points while they are few. On the logarithmic
 * scale, where overruns of a half and of a third of the time weigh alike, the card's points are a guess worth five jobs
 * (see {@link updateNormal}), and they move and widen as the guess does. An absurd entry counts as a bad one only (see
 * {@link holdBack}), and the jobs of one person count for less than those of as many people (see {@link weighJobs}).
 *
 * @param card the card's points in seconds, the likely one above 0
 * @throws RangeError unless 0 ≤ low ≤ likely ≤ high, 0 < likely, and every job took longer than 0
 * @example
 * learnDuration({ low: 480, likely: 600, high: 900 }, jobs).words
 * // 'Usually overruns by 3 min (12 jobs by 12 people).'
 */
export function learnDuration(card: ThreePoint, jobs: readonly TimedJob[]): LearnedDuration {
  refuseBroken(card, jobs);
  const people = new Set(jobs.map(({ who }) => who)).size;
  const duration = jobs.length === 0 ? card : moveCard(card, jobs);
  const overrun = duration.likely - card.likely;
  return { duration, jobs: jobs.length, people, overrun, words: sayOverrun(overrun, jobs.length, people) };
}

function moveCard(card: ThreePoint, jobs: readonly TimedJob[]): ThreePoint {
  const points = card.high > card.low ? card : widen(card);
  const guess = { ...guessOf(points), worth: CARD_WORTH };
  const logs = holdBack(
    jobs.map(({ seconds }) => Math.log(seconds)),
    { expected: guess.mean, weight: CARD_WORTH, spread: Math.sqrt(guess.variance) },
  );
  const weights = weighJobs(jobs);
  const learned = updateNormal(
    guess,
    logs.map((value, job): Weighed => ({ value, weight: weights[job] ?? 1 })),
  );
  const stretch = Math.sqrt(learned.variance / guess.variance);
  const move = (point: number) => Math.exp(learned.mean + stretch * (Math.log(point) - guess.mean));
  return { low: move(points.low), likely: move(points.likely), high: move(points.high) };
}

/** The log-normal distribution with the mean and the variance of the card. */
function guessOf(points: ThreePoint): { mean: number; variance: number } {
  const { mean, variance } = estimateDuration(points);
  const spread = Math.max(LEAST_SPREAD ** 2, Math.log(1 + variance / mean ** 2));
  return { mean: Math.log(mean) - spread / 2, variance: spread };
}

function widen({ likely }: ThreePoint): ThreePoint {
  return { low: likely * (1 - SUPPOSED_SPREAD), likely, high: likely * (1 + SUPPOSED_SPREAD) };
}

/**
 * How much each job counts: m jobs by one person together as m / (1 + (m − 1) × 0.3), the effective size of a cluster
 * (Kish, Survey Sampling, 1965), so that one quick pair of hands doesn't set the time for everybody.
 */
export function weighJobs(jobs: readonly TimedJob[]): number[] {
  return jobs.map(({ who }) => {
    const own = jobs.filter((one) => one.who === who).length;
    return 1 / (1 + (own - 1) * ALIKE);
  });
}

const MINUTE = 60;

function sayOverrun(overrun: number, jobs: number, people: number): string {
  if (jobs === 0) return "Not timed yet; the time is the card's.";
  const seen = `${jobs} ${jobs === 1 ? 'job' : 'jobs'} by ${people} ${people === 1 ? 'person' : 'people'}`;
  const minutes = Math.round(Math.abs(overrun) / MINUTE);
  if (minutes === 0) return `Usually takes what the card says (${seen}).`;
  const how = overrun > 0 ? `overruns by ${minutes} min` : `is done ${minutes} min sooner`;
  return `Usually ${how} (${seen}).`;
}

function refuseBroken(card: ThreePoint, jobs: readonly TimedJob[]): void {
  estimateDuration(card);
  if (card.likely <= 0) throw new RangeError('learnDuration: the likely duration must be above 0.');
  const broken = jobs.find(({ seconds }) => !(seconds > 0 && Number.isFinite(seconds)));
  if (broken) throw new RangeError(`learnDuration: a job of ${broken.seconds} s can't be.`);
}
