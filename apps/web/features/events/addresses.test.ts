import { describe, expect, it } from 'vitest';
import {
  bayAddress,
  cardAddress,
  HOME_ADDRESS,
  newEventAddress,
  signInAddress,
  teamAddress,
} from './addresses';

describe('addresses', () => {
  it('carry the ids in the query string of a static page', () => {
    expect(newEventAddress('t1')).toBe('/event/new/?team=t1');
    expect(cardAddress('t1', 'c1', 'new')).toBe('/car/?team=t1&car=c1&card=new');
    expect(bayAddress({ team: 't1', event: 'e1', car: 'n1', at: 'B' })).toBe(
      '/bay/?team=t1&event=e1&car=n1&at=B',
    );
  });

  it('leave the question mark away without ids', () => {
    expect(teamAddress('t1')).toBe(`${HOME_ADDRESS}?team=t1`);
    expect(HOME_ADDRESS.endsWith('/')).toBe(true);
  });

  it('keep the way back whole when signing in', () => {
    const next = '/event/?team=t1&event=e1';
    expect(new URL(signInAddress(next), 'http://here').searchParams.get('next')).toBe(next);
  });
});
