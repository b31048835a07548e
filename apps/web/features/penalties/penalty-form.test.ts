import { penaltyRules } from '@halfshaft/contract';
import { DEFAULT_PENALTY_RULES, PENALTY_PRESETS, type PenaltyRules } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { findProblems } from '../events/contract-resolver';
import { formToRules, type PenaltyForm, placePenaltyProblem, presetOf, rulesToForm } from './penalty-form';
import { rulesInWords } from './rules-in-words';

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

describe('rulesInWords', () => {
  it('says what counts, in the figures of the rules', () => {
    expect(rulesInWords(DEFAULT_PENALTY_RULES)).toEqual([
      'Late: 10 s a minute. Early: 1 min a minute.',
      'At most 15 min at one control, 30 min in all. Over it: out of time.',
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
    expect(rulesInWords({ ...DEFAULT_PENALTY_RULES, ...none }).slice(1, 3)).toEqual([
      'No limit to lateness.',
      'Lateness never resets.',
    ]);
  });
});
