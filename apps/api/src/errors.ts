import type { ErrorCode, FieldProblem, Problem } from '@halfshaft/contract';
import { NotAMember } from '@halfshaft/store';
import { TRPCError } from '@trpc/server';
import { ZodError } from 'zod';

/** An ending the contract knows, with the sentence a person reads. Thrown by services; never for "no" as an answer. */
export class AppError extends Error {
  override name = 'AppError';
  constructor(
    readonly code: ErrorCode,
    message: string,
    readonly fields: FieldProblem[] = [],
  ) {
    super(message);
  }
}

const TRPC_CODE = {
  signInNeeded: 'UNAUTHORIZED',
  unknown: 'NOT_FOUND',
  notAllowed: 'FORBIDDEN',
  badInput: 'BAD_REQUEST',
  conflict: 'CONFLICT',
  tooMuch: 'PAYLOAD_TOO_LARGE',
  unexpected: 'INTERNAL_SERVER_ERROR',
} as const satisfies Record<ErrorCode, TRPCError['code']>;

export const UNKNOWN_SENTENCE = 'That does not exist, or it is not yours. Go back and choose again.';
/** The request never became a call: broken JSON, none at all, a change asked for by GET. */
const UNREADABLE: ReadonlySet<TRPCError['code']> = new Set([
  'PARSE_ERROR',
  'BAD_REQUEST',
  'METHOD_NOT_SUPPORTED',
  'UNSUPPORTED_MEDIA_TYPE',
]);
export const UNEXPECTED_SENTENCE =
  'Something went wrong on our side. Nothing was changed. Try again in a moment.';

/** What a client is told of an error. Only sentences made for people leave the server. */
export function toProblem(error: TRPCError): Problem {
  const cause = error.cause;
  if (cause instanceof AppError) return { code: cause.code, message: cause.message, fields: cause.fields };
  if (cause instanceof NotAMember) return { code: 'unknown', message: UNKNOWN_SENTENCE, fields: [] };
  if (cause instanceof ZodError && error.code === 'BAD_REQUEST') return inputProblem(cause);
  if (error.code === 'NOT_FOUND') return { code: 'unknown', message: UNKNOWN_SENTENCE, fields: [] };
  if (UNREADABLE.has(error.code)) {
    return {
      code: 'badInput',
      message: 'What was sent could not be read. Reload the page and try again.',
      fields: [],
    };
  }
  return { code: 'unexpected', message: UNEXPECTED_SENTENCE, fields: [] };
}

function inputProblem(error: ZodError): Problem {
  const fields = error.issues.map((issue) => ({ path: issue.path.join('.'), message: issue.message }));
  return { code: 'badInput', message: fields[0]?.message ?? 'Something typed is not right.', fields };
}

/**
 * Gives an error thrown by a service the transport's code for it. One that has a code already keeps it: input that does
 * not fit is the caller's to mend, the same misfit in an answer is ours.
 */
export function toTrpcError(error: unknown): TRPCError {
  if (error instanceof TRPCError && error.code !== 'INTERNAL_SERVER_ERROR') return error;
  const cause = error instanceof TRPCError ? error.cause : error;
  if (cause instanceof AppError)
    return new TRPCError({ code: TRPC_CODE[cause.code], message: cause.message, cause });
  if (cause instanceof NotAMember)
    return new TRPCError({ code: 'NOT_FOUND', message: UNKNOWN_SENTENCE, cause });
  return new TRPCError({ code: 'INTERNAL_SERVER_ERROR', message: UNEXPECTED_SENTENCE, cause });
}

/** For a row that is not there, or not inside the caller's fence: one answer for both. */
export function unknown(): AppError {
  return new AppError('unknown', UNKNOWN_SENTENCE);
}

export function notAllowed(who: string): AppError {
  return new AppError('notAllowed', `That needs ${who}. Ask one of them.`);
}
