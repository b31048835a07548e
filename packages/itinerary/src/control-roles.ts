import type { ControlRole } from './model';

/** The words each role is written with in a table. */
const ROLE_WORDS: Readonly<Record<ControlRole, string>> = {
  start: 'start',
  timeControl: 'time control',
  serviceIn: 'service in',
  serviceOut: 'service out',
  remoteServiceIn: 'remote service in',
  remoteServiceOut: 'remote service out',
  regroupIn: 'regroup in',
  regroupOut: 'regroup out',
  parcFermeIn: 'parc fermé in',
  parcFermeOut: 'parc fermé out',
  technicalIn: 'technical zone in',
  technicalOut: 'technical zone out',
  tyreZoneIn: 'tyre zone in',
  tyreZoneOut: 'tyre zone out',
  refuel: 'refuel',
  finish: 'finish',
};

const HALTS = [
  { words: 'remote service', in: 'remoteServiceIn', out: 'remoteServiceOut' },
  { words: '(?:flexi )?service', in: 'serviceIn', out: 'serviceOut' },
  { words: 'regroup(?:ing|ment)?', in: 'regroupIn', out: 'regroupOut' },
  { words: 'parc ferme', in: 'parcFermeIn', out: 'parcFermeOut' },
  { words: 'tech(?:nical)? (?:zone|control|check)', in: 'technicalIn', out: 'technicalOut' },
  { words: 't[yi]re (?:fitting |marking |change )?zone', in: 'tyreZoneIn', out: 'tyreZoneOut' },
] as const satisfies readonly { words: string; in: ControlRole; out: ControlRole }[];

const ANY_HALT = HALTS.map((halt) => halt.words).join('|');
const HALT = new RegExp(`\\b(${HALTS.map((halt) => halt.words).join(')|\\b(')})`, 'g');
/** Up to three words may stand between the halt and its direction ("service park Northtown in"), but no other halt. */
const DIRECTION = new RegExp(`^(?: (?!(?:${ANY_HALT})\\b)[a-z0-9]+){0,3}? (in|entry|out|exit)\\b`);
const SINGLES: readonly (readonly [RegExp, ControlRole])[] = [
  [/\brefuel(?:l?ing)?\b/, 'refuel'],
  [/\btime control\b/, 'timeControl'],
  [/\bstart\b/, 'start'],
  [/\bfinish\b/, 'finish'],
];

export interface RolesRead {
  /** In the order written; empty when the text names no role. */
  roles: ControlRole[];
  /** A halt is named, but neither in nor out. */
  unclear: boolean;
}

/**
 * The roles a control's text names by keywords, with or without accents, several at once ("Regroup out / Service in").
 *
 * @example
 * rolesOf('Parc fermé out / Service in').roles // ['parcFermeOut', 'serviceIn']
 */
export function rolesOf(text: string): RolesRead {
  const plain = plainWords(text);
  const found: { at: number; role: ControlRole }[] = [];
  let unclear = false;
  for (const match of plain.matchAll(HALT)) {
    const halt = HALTS[match.slice(1).findIndex((group) => group !== undefined)];
    const direction = DIRECTION.exec(plain.slice(match.index + match[0].length))?.[1];
    if (!halt || !direction) unclear = true;
    else
      found.push({ at: match.index, role: direction === 'in' || direction === 'entry' ? halt.in : halt.out });
  }
  for (const [words, role] of SINGLES) {
    const match = words.exec(plain);
    if (match) found.push({ at: match.index, role });
  }
  found.sort((one, other) => one.at - other.at);
  return { roles: [...new Set(found.map((one) => one.role))], unclear };
}

/**
 * Roles as a table writes them; `rolesOf` reads the same roles back.
 *
 * @example
 * roleText(['regroupOut', 'serviceIn']) // 'regroup out / service in'
 */
export function roleText(roles: readonly ControlRole[]): string {
  return roles.map((role) => ROLE_WORDS[role]).join(' / ');
}

/** What stands around a control in its leg, as far as it decides what "start" and "finish" mean. */
export interface LegPlace {
  isFirstOfLeg: boolean;
  hasStageAfter: boolean;
}

/**
 * The roles of a control whose table names none apart from its location. "Start" counts only on a leg's first
 * control and "finish" only after its last stage: before a stage they are words of the place ("Forest start").
 *
 * @example
 * rolesAtPlace('TC2', 'Forest start', { isFirstOfLeg: false, hasStageAfter: true }) // ['timeControl']
 */
export function rolesAtPlace(id: string, location: string, place: LegPlace): ControlRole[] {
  const named = rolesOf(location).roles.filter(
    (role) => (role !== 'start' || place.isFirstOfLeg) && (role !== 'finish' || !place.hasStageAfter),
  );
  if (id.startsWith('RZ') && !named.includes('refuel')) named.push('refuel');
  return named.length === 0 ? ['timeControl'] : named;
}

function plainWords(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[/,;&+]+/g, ' / ')
    .replace(/[^a-z0-9/]+/g, ' ')
    .trim();
}
