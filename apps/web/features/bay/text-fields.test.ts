import { expect, it } from 'vitest';
import { textFields } from './text-fields';

const shape = textFields('clock', 'held');

it('takes a draft with every text, and nothing else that may lie in the storage', () => {
  expect(shape.safeParse({ clock: '13:27', held: '' })).toEqual({
    success: true,
    data: { clock: '13:27', held: '' },
  });
  for (const stored of [null, '13:27', 7, [], {}, { clock: '13:27' }, { clock: 13, held: '' }])
    expect(shape.safeParse(stored)).toEqual({ success: false });
});
