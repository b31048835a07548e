import QRCode from 'qrcode';

/** Readers need this many light modules around a code (ISO/IEC 18004). */
const MARGIN = 4;
/** Black on white whatever the terminal's colours are, and back. */
const BLACK_ON_WHITE = '\u001b[47m\u001b[30m';
const AS_BEFORE = '\u001b[0m';

/** A link as a code for a phone's camera, drawn for a terminal: two rows of modules in one line of text. */
export function drawCode(link: string): string {
  const { modules } = QRCode.create(link, { errorCorrectionLevel: 'L' });
  const isDark = (row: number, column: number) =>
    row >= 0 && column >= 0 && row < modules.size && column < modules.size && modules.get(row, column) === 1;
  const lines: string[] = [];
  for (let row = -MARGIN; row < modules.size + MARGIN; row += 2) {
    let line = '';
    for (let column = -MARGIN; column < modules.size + MARGIN; column += 1) {
      line += halfBlock(isDark(row, column), isDark(row + 1, column));
    }
    lines.push(`${BLACK_ON_WHITE}${line}${AS_BEFORE}`);
  }
  return lines.join('\n');
}

function halfBlock(upper: boolean, lower: boolean): string {
  if (upper) return lower ? '█' : '▀';
  return lower ? '▄' : ' ';
}
