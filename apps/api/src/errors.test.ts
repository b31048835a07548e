import { NotAMember } from '@halfshaft/store';
import { TRPCError } from '@trpc/server';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { AppError, notAllowed, toProblem, toTrpcError, UNKNOWN_SENTENCE, unknown } from './errors';

const misfit = z.object({ people: z.int('Whole people only.') }).safeParse({ people: 1.5 }).error;
/** As tRPC wraps whatever a procedure throws. */
const wrapped = (cause: Error) => new TRPCError({ code: 'INTERNAL_SERVER_ERROR', cause });

describe('toTrpcError', () => {
  it.each([
    ['a service’s own ending', new AppError('conflict', 'Taken.'), 'CONFLICT'],
    ['a row that is not there', unknown(), 'NOT_FOUND'],
    ['a role that does not reach', notAllowed('a manager'), 'FORBIDDEN'],
    ['a stranger to the team', new NotAMember(), 'NOT_FOUND'],
    ['a mistake of ours', new Error('column "x" does not exist'), 'INTERNAL_SERVER_ERROR'],
  ])('gives %s the transport’s code, wrapped or not', (_, error, code) => {
    expect(toTrpcError(error).code).toBe(code);
    expect(toTrpcError(wrapped(error)).code).toBe(code);
  });

  it('keeps the code of input that does not fit: it is not a mistake of ours', () => {
    const error = new TRPCError({ code: 'BAD_REQUEST', cause: misfit });
    expect(toTrpcError(error)).toBe(error);
    expect(toTrpcError(toTrpcError(error))).toBe(error);
  });
});

describe('toProblem', () => {
  it('names the field of input that does not fit', () => {
    expect(toProblem(new TRPCError({ code: 'BAD_REQUEST', cause: misfit }))).toEqual({
      code: 'badInput',
      message: 'Whole people only.',
      fields: [{ path: 'people', message: 'Whole people only.' }],
    });
  });

  it('hands on a service’s sentence and fields', () => {
    const fields = [{ path: 'startPosition', message: 'Taken.' }];
    const error = toTrpcError(new AppError('conflict', 'Taken.', fields));
    expect(toProblem(error)).toEqual({ code: 'conflict', message: 'Taken.', fields });
  });

  it('tells a stranger to the team and the seeker of a missing row the same', () => {
    const told = toProblem(toTrpcError(new NotAMember()));
    expect(told).toEqual({ code: 'unknown', message: UNKNOWN_SENTENCE, fields: [] });
    expect(toProblem(toTrpcError(unknown()))).toEqual(told);
    expect(toProblem(new TRPCError({ code: 'NOT_FOUND', message: 'No procedure "x"' }))).toEqual(told);
  });

  it.each(['PARSE_ERROR', 'BAD_REQUEST', 'METHOD_NOT_SUPPORTED', 'UNSUPPORTED_MEDIA_TYPE'] as const)(
    '%s: could not be read',
    (code) => {
      expect(toProblem(new TRPCError({ code }))).toMatchObject({ code: 'badInput', fields: [] });
      expect(toProblem(new TRPCError({ code })).message).toContain('could not be read');
    },
  );

  it('tells nothing of a mistake of ours, nor of an answer that does not fit its own shape', () => {
    for (const cause of [new Error('password of halfshaft_app'), misfit]) {
      const problem = toProblem(toTrpcError(new TRPCError({ code: 'INTERNAL_SERVER_ERROR', cause })));
      expect(problem.code).toBe('unexpected');
      expect(problem.message).toContain('Nothing was changed');
      expect(JSON.stringify(problem)).not.toMatch(/password|Whole people/);
    }
  });
});
