import { describe, expect, it } from 'vitest';
import { undo } from '../testing/asks';
import { FACT, gist, openBay } from '../testing/bay';
import { doerOf, KAI, MIA } from '../testing/people';

const byKai = {
  ...FACT,
  args: { ...FACT.args, fact: { ...FACT.args.fact, words: 'and a scrape' } },
} as const;

describe('decide: a fact of the car', () => {
  it('keeps the first of an id, and the second in the log with a flag', () => {
    const bay = openBay();
    bay.act(FACT, MIA);
    expect(gist(bay.act(byKai, KAI))).toBe('factRecorded +alsoRecordedBy');
    expect(bay.state.facts.get('landed')).toMatchObject({ fact: FACT.args.fact, recordedBy: MIA });
    expect(bay.log[1]?.body).toMatchObject({ fact: { words: 'and a scrape' } });
  });

  it('is not withdrawn behind the back of someone who says so too', () => {
    const bay = openBay();
    bay.act(FACT, MIA);
    bay.act(byKai, KAI);
    expect(bay.act(undo('a1'), MIA)).toEqual({
      status: 'refused',
      refusal: { code: 'changedSince', personId: KAI },
    });
  });

  it('is taken back by undo, and may be recorded again under its id', () => {
    const bay = openBay();
    bay.act(FACT, MIA);
    expect(gist(bay.act(undo('a1'), MIA))).toBe('undone');
    expect(bay.state.facts.get('landed')?.withdrawn).toBe(true);
    expect(gist(bay.act(byKai, KAI))).toBe('factRecorded');
    expect(bay.state.facts.get('landed')).toMatchObject({ recordedBy: KAI, withdrawn: false });
  });

  it('is kept, flagged, from someone who had left the team by then', () => {
    const bay = openBay();
    expect(gist(bay.act(FACT, doerOf(MIA, { revokedAt: 500 })))).toBe('factRecorded +afterRevocation');
  });

  it('undoes actions recorded before there were facts', () => {
    const bay = openBay();
    bay.act(FACT, MIA);
    const record = bay.state.actions.get('a1');
    if (!record) throw new Error('The action was not remembered.');
    const { facts: _, ...old } = record;
    bay.state = { ...bay.state, actions: new Map([['a1', old]]) };
    expect(gist(bay.act(undo('a1'), MIA))).toBe('undone');
  });
});
