import { incidentInWords } from '@halfshaft/lifing';
import {
  type CarFact,
  type FactPlace,
  type FittedReason,
  GATE_CHECKS,
  type GateChange,
  type GateCheck,
  type OutCause,
  type SettingAsker,
  type TyrePlace,
} from './car-fact';
import type { EntryNames } from './entry-in-words';
import { taskRefOf } from './task-ref-of';

type Names = Pick<EntryNames, 'task' | 'card' | 'service' | 'stage'>;

const TYRE_PLACES: Record<TyrePlace, string> = {
  FL: 'front left',
  FR: 'front right',
  RL: 'rear left',
  RR: 'rear right',
  spare1: 'first spare',
  spare2: 'second spare',
  service: 'left in the service area',
  scrapped: 'given up',
};

const CHECKED: Record<GateCheck, string> = {
  onStands: 'on stands, the stands on boards',
  wheelsChocked: 'wheels that stay down chocked',
  engineOff: 'engine off',
  extinguisherOut: 'fire extinguisher out and within reach',
  systemPinned: "the car's own extinguisher system pinned",
};

const CHANGED: Record<GateChange, string> = {
  refuelled: 'the car was refuelled',
  engineStarted: 'the engine was started',
  carDown: 'the car came down',
};

const FITTED_BECAUSE: Record<FittedReason, string> = {
  wornOut: 'the old one was worn out',
  broke: 'the old one broke',
  planned: 'planned, the old one was still good',
  damagedByAnother: 'the old one was damaged by something else',
};

const OUT_BECAUSE: Record<OutCause, string> = {
  mechanical: 'mechanical',
  offRoad: 'went off the road',
  overTime: 'over the time allowed',
  other: 'another cause',
};

const ASKED_BY: Record<SettingAsker, string> = {
  driver: 'the driver',
  coDriver: 'the co-driver',
  serviceCrew: 'the service crew',
};

/**
 * A fact of the car as words to stand after "recorded". Numbers carry their unit.
 *
 * @example
 * factInWords({ kind: 'incident', code: 'hardLanding', place: 'FL', words: '' }, names) // 'hard landing (FL)'
 */
export function factInWords(fact: CarFact, names: Names): string {
  switch (fact.kind) {
    case 'incident':
      return incidentToTell(fact, names);
    case 'fitted':
      return fittedToTell(fact, names);
    case 'modified': {
      const part = `'${names.card(fact.cardId)}'${inBrackets(fact.position)}`;
      return `that the part of ${part} was altered${because(fact.words)}`;
    }
    case 'out':
      return outToTell(fact, names);
    case 'restarted':
      return `that the car starts again${because(fact.words)}`;
    case 'prepared':
      return fact.cardIds.length === 1 ? '1 job done' : `${fact.cardIds.length} jobs done`;
    case 'gateChecked':
      return gateInWords(fact.checks);
    case 'gateOpened':
      return `that ${gateChangeInWords(fact.because)}, so the checks before work are due again`;
    case 'madeGood': {
      const ref = taskRefOf(fact.of);
      const repair = `'${names.task(ref)}' (temporary repair at ${names.service(ref.serviceId)})`;
      return `that ${repair} is made good${because(fact.words)}`;
    }
    case 'photo':
      return `a photo of '${names.task(taskRefOf(fact.of))}'${because(fact.words)}`;
    case 'tyre':
      return tyreInWords(fact);
    case 'setting': {
      const change = `${fact.setting}${inBrackets(fact.position)} from ${fact.from} to ${fact.to}`;
      const base = fact.backToBase ? ', back to base' : '';
      return `the setting ${change}${base}, asked for by ${ASKED_BY[fact.askedBy]}`;
    }
  }
}

/** The same with where on the event it belongs: "hard landing (FL), after SS3". */
export function placedInWords({ at, fact }: { at: FactPlace; fact: CarFact }, names: Names): string {
  return `${factInWords(fact, names)}; ${placeOfFactInWords(at, fact, names)}`;
}

/** "front left" · "second spare" · "left in the service area". */
export function tyrePlaceInWords(place: TyrePlace): string {
  return TYRE_PLACES[place];
}

/** "the driver" · "the co-driver" · "the service crew". */
export function askerInWords(asker: SettingAsker): string {
  return ASKED_BY[asker];
}

/** "at Service B" · "on the road after SS3" · "on the road before the first stage". */
export function factPlaceInWords(at: FactPlace, names: Pick<Names, 'service' | 'stage'>): string {
  if (at.kind === 'service') return `at ${names.service(at.serviceId)}`;
  if (at.afterStageId === null) return 'on the road before the first stage';
  return `on the road after ${names.stage(at.afterStageId)}`;
}

/** Of the road before the first stage a car's preparation knows only that it was before the start. */
function placeOfFactInWords(at: FactPlace, fact: CarFact, names: Names): string {
  const beforeStart = fact.kind === 'prepared' && at.kind === 'road' && at.afterStageId === null;
  return beforeStart ? 'before the start' : factPlaceInWords(at, names);
}

/** "engine off" · "on stands, the stands on boards". */
export function gateCheckInWords(check: GateCheck): string {
  return CHECKED[check];
}

/** "the car was refuelled" · "the car came down". */
export function gateChangeInWords(change: GateChange): string {
  return CHANGED[change];
}

/** "the old one was worn out" · "planned, the old one was still good". */
export function fittedReasonInWords(reason: FittedReason): string {
  return FITTED_BECAUSE[reason];
}

/** "mechanical" · "went off the road". */
export function outCauseInWords(cause: OutCause): string {
  return OUT_BECAUSE[cause];
}

type FactOf<Kind extends CarFact['kind']> = Extract<CarFact, { kind: Kind }>;

function incidentToTell({ code, place, words, brokenCardId }: FactOf<'incident'>, names: Names): string {
  const broken = brokenCardId === undefined ? '' : `, in which a part of '${names.card(brokenCardId)}' broke`;
  return `${incidentInWords(code)}${inBrackets(place)}${broken}${because(words)}`;
}

function fittedToTell(fact: FactOf<'fitted'>, names: Names): string {
  const kind = fact.otherKind ? ' of another kind' : '';
  const why = fact.because === undefined ? '' : `, ${FITTED_BECAUSE[fact.because]}`;
  return `new parts${kind} for '${names.card(fact.cardId)}'${inBrackets(fact.position)}${why}${because(fact.words)}`;
}

function outToTell({ forDay, cause, cardId, words }: FactOf<'out'>, names: Names): string {
  const how = `the car is out${forDay ? ' for the day' : ''}`;
  const why = cause === null ? 'cause not stated' : OUT_BECAUSE[cause];
  const part = cardId === null ? '' : `, a part of '${names.card(cardId)}'`;
  return `that ${how} (${why}${part})${because(words)}`;
}

function gateInWords(checks: readonly GateCheck[]): string {
  const list = (so: boolean) =>
    GATE_CHECKS.filter((check) => checks.includes(check) === so)
      .map(gateCheckInWords)
      .join('; ');
  const not = list(false);
  return `before work: ${list(true)}${not === '' ? '' : `. Not so: ${not}`}`;
}

function tyreInWords(tyre: Extract<CarFact, { kind: 'tyre' }>): string {
  const measured = [
    ...(tyre.treadTenths === null ? [] : [`tread ${(tyre.treadTenths / 10).toFixed(1)} mm`]),
    ...(tyre.coldMillibar === null ? [] : [`${inBar(tyre.coldMillibar)} cold`]),
    ...(tyre.hotMillibar === null ? [] : [`${inBar(tyre.hotMillibar)} hot`]),
  ];
  const called = tyre.compound === '' ? tyre.mark : `${tyre.mark}, ${tyre.compound}`;
  return [`tyre ${called}: ${TYRE_PLACES[tyre.place]}`, ...measured].join(', ');
}

function inBar(millibar: number): string {
  return `${(millibar / 1000).toFixed(2)} bar`;
}

function inBrackets(place: string | null): string {
  return place === null || place === '' ? '' : ` (${place})`;
}

function because(words: string): string {
  return words === '' ? '' : `: ${words}`;
}
