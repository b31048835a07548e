import { describe, expect, it } from 'vitest';
import { sign } from '../testing/asks';
import { close, gist, NUTS, openBay, SIGNED } from '../testing/bay';
import { doerOf, JO, KAI, MIA } from '../testing/people';

describe('decide: the second signature', () => {
  it('is by someone who had no hand in the work', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA, SIGNED);
    bay.act(close(NUTS), KAI, SIGNED);
    expect(gist(bay.act(sign, MIA, SIGNED))).toBe('refused needsAnotherPerson');
    expect(gist(bay.act(sign, KAI, SIGNED))).toBe('refused needsAnotherPerson');
    expect(gist(bay.act(sign, doerOf(JO, { enteredBy: MIA }), SIGNED))).toBe('signed');
    expect(bay.task(NUTS)).toMatchObject({ doneBy: MIA, signedBy: JO });
    expect(bay.act(sign, 'lee', SIGNED)).toEqual({
      status: 'refused',
      refusal: { code: 'alreadySigned', personId: JO },
    });
  });

  it('waits until the work is done, and only where the card asks for it', () => {
    const bay = openBay();
    expect(gist(bay.act(sign, KAI, SIGNED))).toBe('refused notAwaitingSignature');
    bay.act(close(NUTS), MIA);
    expect(gist(bay.act(sign, KAI))).toBe('refused notAwaitingSignature');
  });

  it('says how it was given, and asks for another person however it was given', () => {
    const byInitials = { kind: 'signTask', args: { task: NUTS, byInitials: true } } as const;
    const bay = openBay();
    bay.act(close(NUTS), MIA, SIGNED);
    expect(gist(bay.act(byInitials, doerOf(MIA, { enteredBy: KAI }), SIGNED))).toBe(
      'refused needsAnotherPerson',
    );
    expect(bay.act(byInitials, doerOf(JO, { enteredBy: MIA }), SIGNED)).toMatchObject({
      entries: [{ by: JO, enteredBy: MIA, body: { kind: 'signed', byInitials: true } }],
    });
  });

  it('falls when the signer turns out to have done the work too', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA, SIGNED);
    bay.act(sign, KAI, SIGNED);
    bay.act(close(NUTS), KAI, SIGNED);
    expect(bay.task(NUTS)).toMatchObject({ doneBy: MIA, alsoDoneBy: [KAI], signedBy: null });
    expect(gist(bay.act(sign, KAI, SIGNED))).toBe('refused needsAnotherPerson');
  });

  it('is still taken for work at a service that was cancelled afterwards', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA, SIGNED);
    expect(gist(bay.act(sign, KAI, { ...SIGNED, serviceStands: false }))).toBe('signed');
  });
});
