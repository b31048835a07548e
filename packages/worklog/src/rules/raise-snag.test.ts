import { describe, expect, it } from 'vitest';
import { gist, LEAK, openBay, SNAG, STAGE } from '../testing/bay';
import { KAI, MIA } from '../testing/people';

describe('decide: snags and stages', () => {
  it('keeps a snag, and adds new words when it is raised again under the same id', () => {
    const bay = openBay();
    bay.act(SNAG, MIA);
    const again = { ...SNAG, args: { ...SNAG.args, words: 'getting worse', urgent: true } };
    expect(gist(bay.act(again, KAI))).toBe('snagRaised +alsoRaisedBy');
    const both = { raisedBy: MIA, words: 'oil on the hub\ngetting worse', urgent: true, withdrawn: false };
    expect(bay.state.snags.get('leak')).toMatchObject(both);
  });

  it('stays one to stop for, whoever raises it again', () => {
    const bay = openBay();
    bay.act({ ...SNAG, args: { ...SNAG.args, urgent: true, stop: true } }, MIA);
    bay.act(SNAG, KAI);
    expect(bay.state.snags.get('leak')).toMatchObject({ urgent: true, stop: true });
    const milder = openBay();
    milder.act(SNAG, MIA);
    milder.act(SNAG, KAI);
    expect(milder.state.snags.get('leak')).not.toHaveProperty('stop');
  });

  it('lets a snag’s repair be taken once the snag is raised', () => {
    const bay = openBay();
    const takeLeak = { kind: 'takeTask', args: { task: LEAK } } as const;
    expect(gist(bay.act(takeLeak, KAI))).toBe('refused unknownSnag');
    bay.act(SNAG, MIA);
    expect(gist(bay.act(takeLeak, KAI))).toBe('claimed');
  });

  it('keeps what was last said about a stage', () => {
    const bay = openBay();
    bay.act(STAGE, MIA);
    bay.act({ ...STAGE, args: { ...STAGE.args, driven: false } }, KAI, null);
    expect(bay.state.stages.get('car7~SS3')).toMatchObject({ driven: false, confirmedBy: KAI });
  });
});
