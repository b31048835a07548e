import { describe, expect, it } from 'vitest';
import { contentKey, sameContent } from './content-key';
import { actionOf, close, NUTS, PAD_FL, SNAG, WORN } from './testing/bay';
import { KAI, MIA } from './testing/people';

const closing = actionOf(close(NUTS, [WORN], [PAD_FL]), MIA, 'a1');

describe('contentKey and sameContent', () => {
  it('do not mind the order of keys, at any depth', () => {
    const turned = {
      ...Object.fromEntries(Object.entries(closing).reverse()),
      args: {
        readings: [PAD_FL],
        findings: [Object.fromEntries(Object.entries(WORN).reverse())],
        task: NUTS,
      },
    };
    expect(JSON.stringify(turned)).not.toBe(JSON.stringify(closing));
    expect(contentKey({ ...closing, ...turned })).toBe(contentKey(closing));
    expect(sameContent(JSON.parse(JSON.stringify(closing)), closing)).toBe(true);
  });

  it('see every difference', () => {
    expect(sameContent(closing, { ...closing, by: KAI })).toBe(false);
    expect(sameContent(closing, { ...closing, deviceTime: 1_001 })).toBe(false);
    const other = { ...PAD_FL, value: 81 };
    expect(sameContent(closing, actionOf(close(NUTS, [WORN], [other]), MIA, 'a1'))).toBe(false);
  });

  it('mind the order of findings', () => {
    const [one, two] = [WORN, { ...WORN, position: 'FL' }].map((finding) => [finding]);
    const listed = (findings: typeof one) => actionOf(close(NUTS, findings), MIA, 'a1');
    const [first, second] = [
      [...(one ?? []), ...(two ?? [])],
      [...(two ?? []), ...(one ?? [])],
    ];
    expect(sameContent(listed(first), listed(second))).toBe(false);
  });

  it('hold an action of the version before and its upgrade for the same', () => {
    const now = actionOf(SNAG, MIA, 'a1');
    const { urgent: _, ...argsBefore } = SNAG.args;
    expect(sameContent({ ...now, version: 0, args: argsBefore }, now)).toBe(true);
    expect(
      sameContent({ ...now, version: 0, args: argsBefore }, { ...now, args: { ...SNAG.args, urgent: true } }),
    ).toBe(false);
  });

  it('tell unknown kinds and versions apart too', () => {
    expect(sameContent({ ...closing, version: 9 }, { ...closing, version: 8 })).toBe(false);
    expect(sameContent({ ...closing, kind: 'wash' }, { ...closing, kind: 'polish' })).toBe(false);
  });
});
