import type { ActionKind } from './model';

const FACTS: ReadonlySet<ActionKind> = new Set<ActionKind>([
  'closeTask',
  'raiseSnag',
  'confirmStage',
  'recordTime',
  'recordFact',
]);

/**
 * True for what happened (work closed, a snag, a stage driven, a time a control wrote, a fact of the car): always kept, at
 * worst flagged. False for a claim: a request that may be refused, to be shown as "asked for" until the server has answered.
 *
 * @example
 * isFact('takeTask') // false
 */
export function isFact(kind: ActionKind): boolean {
  return FACTS.has(kind);
}
