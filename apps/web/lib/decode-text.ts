/**
 * The text of a file. Spreadsheets write UTF-8, UTF-16 with a mark in front ("Unicode text"), or the letters of Western
 * Windows; what is no UTF-8 is taken for the last.
 *
 * @example
 * decodeText(new Uint8Array([0xe9])) // 'é'
 */
export function decodeText(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
