/** A square of dark and light modules, row by row; anything but 0 is dark. */
export interface Modules {
  size: number;
  data: ArrayLike<number>;
}

/**
 * The dark modules as one SVG path in units of a module, each run of a row as one bar. Without the light margin of
 * four modules that a reader needs around it.
 *
 * @example
 * qrPath({ size: 2, data: [1, 1, 0, 1] }) // 'M0 0h2v1h-2zM1 1h1v1h-1z'
 */
export function qrPath({ size, data }: Modules): string {
  let path = '';
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      const start = column;
      while (column < size && data[row * size + column]) column += 1;
      const length = column - start;
      if (length > 0) path += `M${start} ${row}h${length}v1h-${length}z`;
    }
  }
  return path;
}
