import { updateEntryInput } from '@halfshaft/contract';
import { describe, expect, it } from 'vitest';
import { findProblems } from './contract-resolver';
import { formToPositions, type PositionForm, placePositionProblem, toPositionForm } from './position-form';

describe('the positions after a regroup as typed', () => {
  it('come back as they were saved', () => {
    const form = toPositionForm([2, 3], { 3: 9 });
    expect(form).toEqual({ s2: '', s3: '9' });
    expect(formToPositions(form)).toEqual({ 3: 9 });
  });

  it.each(['nine', '0', '301', '1.5'])('refuse %j at its own box', (typed) => {
    const schema = updateEntryInput.pick({ positionsBySection: true });
    const toBody = (values: PositionForm) => ({ positionsBySection: formToPositions(values) });
    expect(findProblems({ s2: '', s3: typed }, toBody, schema, placePositionProblem)).toEqual([
      { path: 'laterPositions.s3', message: 'The start position must be a whole number from 1 to 300.' },
    ]);
  });
});
