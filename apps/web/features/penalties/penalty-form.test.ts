import { penaltyRules } from '@halfshaft/contract';
import {
  type ControlRole,
  DEFAULT_PENALTY_RULES,
  PENALTY_PRESETS,
  type PenaltyRules,
} from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { findProblems } from '../events/contract-resolver';
import { replicaOf } from '../work/fixtures';
import { EARLY_AT, earlyChoices } from './early-roles';
import { formToRules, type PenaltyForm, placePenaltyProblem, presetOf, rulesToForm } from './penalty-form';
import { rulesInWords } from './rules-in-words';
import { penaltyRulesAt } from './rules-schema';

const ROLES = Object.keys(EARLY_AT) as ControlRole[];
const base = {
  kind: 'control' as const,
  name: '',
  roadMetres: 0,
  leg: 1,
  section: 1,
  firstCarAt: 0,
};

const own: PenaltyRules = {
  ...DEFAULT_PENALTY_RULES,
  overMaximum: { means: 'fixedPenalty', seconds: 900 },
  mainControls: ['TC4A', 'TC8B'],
  makeUpFloorPerMille: 755,
  serviceOut: 'asPlanned',
  heldMinutesCount: true,
  maxLateMinutesInSection: 20,
};

describe('the penalty form', () => {
  it('gives back what it was given', () => {
    for (const rules of [own, ...PENALTY_PRESETS.map((preset) => preset.rules)]) {
      expect(formToRules(rulesToForm(rules))).toEqual(rules);
      expect(penaltyRules.safeParse(rules).success).toBe(true);
    }
  });

  it('knows a preset again, and that one figure makes it another', () => {
    for (const preset of PENALTY_PRESETS) expect(presetOf(preset.rules)?.id).toBe(preset.id);
    expect(presetOf({ ...DEFAULT_PENALTY_RULES, lateSecondsPerMinute: 11 })).toBeNull();
  });

  it('puts each problem to its field', () => {
    const problemsOf = (more: Partial<PenaltyForm>) =>
      findProblems(
        { ...rulesToForm(DEFAULT_PENALTY_RULES), ...more },
        formToRules,
        penaltyRules,
        placePenaltyProblem,
      );
    expect(problemsOf({})).toEqual([]);
    expect(problemsOf({ lateSecondsPerMinute: 'ten' }).map(({ path }) => path)).toEqual([
      'lateSecondsPerMinute',
    ]);
    expect(problemsOf({ maxLateMinutesInTotal: '' })).toEqual([]);
    expect(problemsOf({ overMeans: 'fixedPenalty' }).map(({ path }) => path)).toEqual(['overSeconds']);
    expect(problemsOf({ makeUpPercent: '120' })[0]?.message).toContain('from 0 to 100 percent');
  });
});

describe('the kinds of control a form offers', () => {
  const { itinerary } = replicaOf();
  const labels = (chosen: ControlRole[]) =>
    earlyChoices(itinerary, chosen).map(({ label, hint }) => `${label}: ${hint}`);

  it('are those the itinerary has, each with its controls', () => {
    expect(labels(['finish'])).toEqual([
      'Arriving at the finish: TC3',
      'Arriving at service: TC1A, TC2A',
      'Leaving service: TC1B, TC2B',
      'Starting: TC0',
    ]);
  });

  it('keep one that is allowed and gone from the itinerary, so that it can be taken back', () => {
    expect(labels(['regroupIn'])).toContain('Arriving at regroup: no such control in this itinerary');
  });

  it('leave out a refuel nobody clocks, and know every kind of control', () => {
    const roles = ROLES.map((role) => ({ ...base, id: role, roles: [role], allowedSeconds: 60 }));
    const every = { ...itinerary, points: roles };
    expect(earlyChoices(every, [])).toHaveLength(ROLES.length);
    const unclocked = roles.map((point) => ({ ...point, allowedSeconds: null }));
    const offered = earlyChoices({ ...itinerary, points: unclocked }, []).map(({ value }) => value);
    expect(ROLES.filter((role) => !offered.includes(role))).toEqual(['refuel']);
  });
});

describe('main controls', () => {
  const { itinerary } = replicaOf();
  const problemsOf = (mainControls: string) =>
    findProblems(
      { ...rulesToForm(DEFAULT_PENALTY_RULES), mainControls },
      formToRules,
      penaltyRulesAt(itinerary),
      placePenaltyProblem,
    );

  it('must be controls of the itinerary', () => {
    expect(problemsOf('TC1A, TC2B')).toEqual([]);
    expect(problemsOf('TC1A, TC9')).toEqual([
      {
        path: 'mainControls',
        message: 'TC9 is no control of this itinerary. Its controls are TC0, TC1A, TC1B, TC2A, TC2B, TC3.',
      },
    ]);
  });

  it('are placed where the form has them, also when the server says it', () => {
    const placed = placePenaltyProblem({ path: 'rules.mainControls.1', message: 'too long' });
    expect(placed).toEqual({ path: 'mainControls', message: 'too long' });
  });
});

describe('rulesInWords', () => {
  it('says what counts, in the figures of the rules', () => {
    expect(rulesInWords(DEFAULT_PENALTY_RULES)).toEqual([
      'Late: 10 s a minute. Early: 1 min a minute.',
      'At most 15 min at one control, 30 min in all. Over it: out of time.',
      'Early is allowed: arriving at the finish.',
      'Lateness resets at regroups, legs.',
      'Late in means late out of service: the working time stays.',
    ]);
    expect(rulesInWords(own)).toContain(
      'At most 15 min at one control, 20 min in one section, 30 min in all. Over it: a penalty of 15 min.',
    );
    expect(rulesInWords(own)).toContain(
      'The printed out-time of service stays: late in means less working time.',
    );
    const none = { maxLateMinutesAtControl: null, maxLateMinutesInTotal: null, resetsAt: [] };
    expect(rulesInWords({ ...DEFAULT_PENALTY_RULES, ...none, earlyAllowedAt: [] }).slice(1, 4)).toEqual([
      'No limit to lateness.',
      'Early is allowed nowhere.',
      'Lateness never resets.',
    ]);
  });
});
