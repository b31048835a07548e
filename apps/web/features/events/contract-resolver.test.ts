import { shortText, wholeNumber } from '@halfshaft/contract';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { contractResolver, findProblems } from './contract-resolver';

const schema = z.object({ name: shortText('The name', 5), seconds: wholeNumber('The time', 30, 90) });
const toBody = (values: { name: string; minutes: string }) => ({
  name: values.name,
  seconds: Number(values.minutes) * 60,
});
const place = (problem: { path: string; message: string }) =>
  problem.path === 'seconds' ? { path: 'minutes', message: 'From 0.5 to 1.5 minutes.' } : problem;

describe('findProblems', () => {
  it('finds none in a form that keeps to the contract', () => {
    expect(findProblems({ name: 'pads', minutes: '1' }, toBody, schema, place)).toEqual([]);
  });

  it("names the form's own fields, each once", () => {
    expect(findProblems({ name: '', minutes: 'x' }, toBody, schema, place)).toEqual([
      { path: 'name', message: 'The name is empty. Type it in.' },
      { path: 'minutes', message: 'From 0.5 to 1.5 minutes.' },
    ]);
  });
});

describe('contractResolver', () => {
  const resolve = contractResolver(schema, toBody, place);
  const options = { fields: {}, shouldUseNativeValidation: false };

  it('leaves what was typed as it is', async () => {
    const values = { name: 'pads', minutes: '1' };
    expect(await resolve(values, undefined, options)).toEqual({ values, errors: {} });
  });

  it('puts each sentence at its field', async () => {
    const { errors } = await resolve({ name: 'pads', minutes: '9' }, undefined, options);
    expect(errors).toMatchObject({ minutes: { message: 'From 0.5 to 1.5 minutes.' } });
  });
});
