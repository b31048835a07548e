/** What is known about leaving a repair, and what the time for doing it costs. */
export interface LeavingQuestion {
  repair: string;
  /** Expected seconds for lateness with the repair done and with it left (see {@link priceLateness}). */
  doneSeconds: number;
  leftSeconds: number;
  /** Stage km until it could be done after all. */
  stageKm: number;
  /** Seconds lost on each of these km if it is left. */
  secondsPerKm: number;
  /** How likely leaving it puts the car out before then, from 0 to 1, over and above what threatens it anyway. */
  outChance: number;
  /** Seconds that being out counts for. */
  outSeconds: number;
}

export interface LeavingAnswer {
  better: 'do' | 'leave' | 'equal';
  /** Expected seconds by which the better choice is better. */
  bySeconds: number;
  /** The pace loss at which both would be equal, the risk being as stated; nothing when the risk alone decides. */
  evenSecondsPerKm?: number;
  /** The risk at which both would be equal, the pace loss being as stated; nothing when no risk could make them so. */
  evenOutChance?: number;
  sentences: readonly string[];
}

/**
 * Weighs leaving a repair against doing it, in seconds of the event: pace lost on the stages and the risk of being out
 * against lateness. It says nothing about whether the car may be driven like that, and must not be asked about what is
 * mandatory.
 *
 * @throws RangeError when a number is below 0 or not finite, or the risk is above 1
 * @example
 * weighLeaving({ repair: 'Handbrake', doneSeconds: 40, leftSeconds: 0, stageKm: 20, secondsPerKm: 1, outChance: 0, outSeconds: 1800 })
 * // { better: 'leave', bySeconds: 20, evenSecondsPerKm: 2, evenOutChance: 0.0111, … }
 */
export function weighLeaving(question: LeavingQuestion): LeavingAnswer {
  refuseBrokenNumbers(question);
  const { doneSeconds, leftSeconds, stageKm, secondsPerKm, outChance, outSeconds } = question;
  const forTime = doneSeconds - leftSeconds;
  const forPace = stageKm * secondsPerKm;
  const forRisk = outChance * outSeconds;
  const gain = forPace + forRisk - forTime;
  const evenPace = stageKm > 0 ? (forTime - forRisk) / stageKm : -1;
  const evenRisk = outSeconds > 0 ? (forTime - forPace) / outSeconds : -1;
  const answer = {
    better: betterOf(gain),
    bySeconds: Math.abs(gain),
    ...(evenPace >= 0 ? { evenSecondsPerKm: evenPace } : {}),
    ...(evenRisk >= 0 && evenRisk <= 1 ? { evenOutChance: evenRisk } : {}),
  };
  return { ...answer, sentences: sayAnswer(question, answer) };
}

/** Less than that is no difference: the estimates are never so good. */
const EQUAL_SECONDS = 0.05;

function betterOf(gain: number): LeavingAnswer['better'] {
  if (Math.abs(gain) < EQUAL_SECONDS) return 'equal';
  return gain > 0 ? 'do' : 'leave';
}

function sayAnswer(question: LeavingQuestion, answer: Omit<LeavingAnswer, 'sentences'>): string[] {
  const { repair, doneSeconds, leftSeconds, stageKm, secondsPerKm, outChance } = question;
  const { evenSecondsPerKm, evenOutChance } = answer;
  const forTime = doneSeconds - leftSeconds;
  const sentences = [
    forTime > 0
      ? `${repair}: doing it costs about ${seconds(forTime)} in lateness.`
      : `${repair}: doing it costs no time at the control.`,
  ];
  if (evenSecondsPerKm !== undefined && forTime > 0) {
    sentences.push(
      `Over ${round(stageKm)} km of stage, leaving it costs the same if the car loses ${round(evenSecondsPerKm)} s per km; ` +
        `you expect ${round(secondsPerKm)} s per km.`,
    );
  }
  if (evenOutChance !== undefined && forTime > 0) {
    sentences.push(
      `At that pace it would also be even if leaving it put the car out ${inHundred(evenOutChance)}; ` +
        `you expect ${inHundred(outChance)}.`,
    );
  }
  return [...sentences, verdictOf(answer), CAUTION];
}

function verdictOf({ better, bySeconds }: Pick<LeavingAnswer, 'better' | 'bySeconds'>): string {
  if (better === 'equal') return 'By time alone it makes no difference.';
  const choice = better === 'do' ? 'doing it' : 'leaving it';
  return `By time alone ${choice} is better, by about ${seconds(bySeconds)}.`;
}

const CAUTION =
  "This weighs time only. Whether the car is fit to drive is for qualified people and the event's regulations.";

function seconds(number: number): string {
  return `${round(number)} s`;
}

/** Two digits that mean something, and no more: 0.034 as 0.03, 3.42 as 3.4, 134.2 as 134. */
function round(number: number): string {
  const digits = number >= 10 || number === 0 ? 0 : number >= 1 ? 1 : 2;
  return `${Number(number.toFixed(digits))}`;
}

function inHundred(share: number): string {
  return `${round(100 * share)} times in 100`;
}

function refuseBrokenNumbers({ repair, ...numbers }: LeavingQuestion): void {
  for (const [what, number] of Object.entries(numbers)) {
    if (number >= 0 && Number.isFinite(number) && (what !== 'outChance' || number <= 1)) continue;
    throw new RangeError(`weighLeaving: ${what} of ${repair} is ${number}, which can't be.`);
  }
}
