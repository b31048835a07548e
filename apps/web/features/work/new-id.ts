interface IdSource {
  randomUUID?: () => string;
  getRandomValues: (bytes: Uint8Array<ArrayBuffer>) => Uint8Array<ArrayBuffer>;
}

/**
 * A random id (UUID version 4, RFC 9562). Browsers give `randomUUID` only to pages served over https or from the same
 * machine; a phone in a van's own network has just `getRandomValues`.
 */
export function newId(source: IdSource = globalThis.crypto): string {
  return source.randomUUID ? source.randomUUID() : idOf(source.getRandomValues(new Uint8Array(16)));
}

function idOf(bytes: Uint8Array): string {
  const digits = Array.from(bytes, (byte, index) => toHex(withVersion(byte, index))).join('');
  const groups = [digits.slice(0, 8), digits.slice(8, 12), digits.slice(12, 16), digits.slice(16, 20)];
  return [...groups, digits.slice(20)].join('-');
}

/** Byte 6 carries the version (4), byte 8 the variant (binary 10), as RFC 9562 asks. */
function withVersion(byte: number, index: number): number {
  if (index === 6) return (byte & 0x0f) | 0x40;
  return index === 8 ? (byte & 0x3f) | 0x80 : byte;
}

function toHex(byte: number): string {
  return byte.toString(16).padStart(2, '0');
}
