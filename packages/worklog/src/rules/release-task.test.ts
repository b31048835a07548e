import { describe, expect, it } from 'vitest';
import { release, take } from '../testing/asks';
import { CANCELLED, gist, NUTS, openBay } from '../testing/bay';
import { KAI, MANAGER, MIA } from '../testing/people';

describe('decide: letting go', () => {
  it('is for the holder or someone who may manage', () => {
    const bay = openBay();
    bay.act(take, MIA);
    expect(gist(bay.act(release, KAI))).toBe('refused heldByAnother');
    expect(gist(bay.act(release, MANAGER))).toBe('released');
    expect(bay.task(NUTS)).toMatchObject({ state: 'open', holder: null });
    expect(gist(bay.act(release, MIA))).toBe('refused notHeld');
  });

  it('still works after the service was cancelled', () => {
    const bay = openBay();
    bay.act(take, MIA);
    expect(gist(bay.act(release, MIA, CANCELLED))).toBe('released');
  });
});
