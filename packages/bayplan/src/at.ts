/**
 * One number of a typed array. The compiler can't know that an index lies inside, and a fallback value would hide a wrong
 * one in the hot loops; here the index always comes from the project that sized the array.
 */
export function at(array: Int32Array | Float64Array | Uint8Array, index: number): number {
  return array[index] as number;
}
