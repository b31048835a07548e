import { expect, it } from 'vitest';
import { textOfFile } from './text-of-file';

const read = (content: BlobPart, name = 'times.csv') =>
  textOfFile(new File([content], name), 'a list of times');

it('reads a file as a text box keeps it', async () => {
  expect(await read('\uFEFFCar;Control\r\n7;TC1\r')).toEqual({ ok: true, text: 'Car;Control\n7;TC1\n' });
});

it('says why a file is no list', async () => {
  expect(await read('PK\0\0', 'times.xlsx')).toEqual({
    ok: false,
    says: 'times.xlsx is no text. In the spreadsheet, save it as CSV and choose that.',
  });
  expect(await read('7'.repeat(2_000_001))).toEqual({
    ok: false,
    says: 'times.csv is too large for a list of times. Save that alone as CSV.',
  });
});
