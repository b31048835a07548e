import type { Fact } from './model';

/** A fact with its place in the log. */
export interface Placed<F extends Fact = Fact> {
  fact: F;
  order: number;
}

/** The facts of one kind up to a point (at it included), earliest first. */
export function factsOf<K extends Fact['kind']>(
  facts: readonly Fact[],
  kind: K,
  upTo: number,
): Placed<Extract<Fact, { kind: K }>>[] {
  return facts
    .map((fact, order) => ({ fact, order }))
    .filter(
      (each): each is Placed<Extract<Fact, { kind: K }>> =>
        each.fact.kind === kind && each.fact.pointIndex <= upTo,
    )
    .sort(compareTime);
}

/** By point of the route, and at the same point by the order of the log. */
export function compareTime(first: Placed, second: Placed): number {
  return first.fact.pointIndex - second.fact.pointIndex || first.order - second.order;
}

/** Whether a card was done after something else had happened, up to a point. */
export function isDoneAfter(facts: readonly Fact[], cardId: string, what: Placed, upTo: number): boolean {
  return factsOf(facts, 'done', upTo).some(
    (done) => done.fact.cardId === cardId && compareTime(what, done) < 0,
  );
}
