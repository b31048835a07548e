import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyAll } from '../apply';
import { decide } from '../decide';
import type { LogEntry } from '../entry';
import { isFact } from '../is-fact';
import type { Doer, TaskRules } from '../model';
import { numberEntries } from '../number-entries';
import { rebuild } from '../rebuild';
import { emptyState, type WorkState } from '../state';
import { actionOf } from '../testing/bay';
import { randomSteps, type Step } from '../testing/fixtures';
import { actionOfEntries } from './action-of-entries';

/** One server: its log, what the log gives, and every action it has answered. */
interface Server {
  log: LogEntry[];
  state: WorkState;
  answered: Map<string, 'accepted' | 'refused'>;
}

/** The rules an action was decided by do not travel: the other server reads them from the same cards. */
type RulesOf = Map<string, TaskRules | null>;

function take(
  server: Server,
  action: ReturnType<typeof actionOf>,
  doer: Doer,
  rules: TaskRules | null,
): void {
  if (server.answered.has(action.actionId)) return;
  const outcome = decide(server.state, action, doer, rules);
  server.answered.set(action.actionId, outcome.status);
  if (outcome.status === 'refused') return;
  const entries = numberEntries(outcome.entries, server.log.length + 1, 0);
  server.log.push(...entries);
  server.state = applyAll(server.state, entries);
}

/** A file is the whole log as it was; what it holds is decided one after the other, as if it were pushed. */
function bringIn(server: Server, file: readonly LogEntry[], rulesOf: RulesOf): void {
  for (const actionId of new Set(file.map((entry) => entry.actionId))) {
    const entries = file.filter((entry) => entry.actionId === actionId);
    const device = { deviceId: entries[0]?.deviceId ?? '', deviceSeq: 1 };
    const entered = actionOfEntries(entries, device);
    if (!entered) throw new Error(`The entries of ${actionId} give no action.`);
    const { action, enteredBy } = entered;
    const doer = { personId: action.by, enteredBy, mayManage: true, revokedAt: null };
    take(server, action, doer, rulesOf.get(actionId) ?? null);
  }
}

type Move =
  | { kind: 'work'; where: 'home' | 'van'; step: Step }
  | { kind: 'save' | 'carry'; to: 'home' | 'van' };

const moves: fc.Arbitrary<Move[]> = randomSteps.chain((steps) =>
  fc
    .tuple(
      fc.array(fc.constantFrom<'home' | 'van'>('home', 'van'), {
        minLength: steps.length,
        maxLength: steps.length,
      }),
      fc.array(
        fc.record({
          kind: fc.constantFrom<'save' | 'carry'>('save', 'carry'),
          to: fc.constantFrom<'home' | 'van'>('home', 'van'),
        }),
        {
          maxLength: 8,
        },
      ),
      fc.infiniteStream(fc.nat()),
    )
    .map(([places, carries, chance]) => {
      const all: Move[] = steps.map((step, index) => ({
        kind: 'work',
        where: places[index] ?? 'home',
        step,
      }));
      for (const carry of carries) all.splice(Number(chance.next().value) % (all.length + 1), 0, carry);
      return all;
    }),
);

describe('work on two servers, carried both ways in any order and any number of times', () => {
  it('has each action exactly once at home, every fact that the van took, and a state that its log rebuilds', () => {
    fc.assert(
      fc.property(moves, (all) => {
        const open = (): Server => ({ log: [], state: emptyState, answered: new Map() });
        const servers = { home: open(), van: open() };
        /** Files that somebody made and may bring in late, or again. */
        const files = { home: [] as LogEntry[], van: [] as LogEntry[] };
        const rulesOf: RulesOf = new Map();
        for (const [index, move] of all.entries()) {
          if (move.kind === 'work') {
            const { body, doer, rules } = move.step;
            const actionId = `a${index}`;
            rulesOf.set(actionId, rules);
            take(servers[move.where], actionOf(body, doer.personId, actionId), doer, rules);
          } else if (move.kind === 'save') {
            files[move.to] = [...servers[move.to === 'home' ? 'van' : 'home'].log];
          } else bringIn(servers[move.to], files[move.to], rulesOf);
        }
        const { home, van } = servers;
        bringIn(home, van.log, rulesOf);
        const once = [...home.log];
        bringIn(home, van.log, rulesOf);
        bringIn(home, files.home, rulesOf);
        expect(home.log).toEqual(once);
        expect(home.log.map((entry) => entry.seq)).toEqual(home.log.map((_, index) => index + 1));
        expect(rebuild(home.log)).toEqual(home.state);
        for (const entry of van.log) expect(home.answered.has(entry.actionId)).toBe(true);
        const kept = new Set(home.log.map((entry) => entry.actionId));
        for (const entry of van.log) if (isFactEntry(entry)) expect(kept).toContain(entry.actionId);
      }),
      { numRuns: 300 },
    );
  });
});

function isFactEntry(entry: LogEntry): boolean {
  const entered = actionOfEntries([entry], { deviceId: '', deviceSeq: 1 });
  return entered !== null && isFact(entered.action.kind);
}
