/** Signs no file system takes in a name. */
const NOT_IN_NAMES = /[\\/:*?"<>|\p{Cc}]+/gu;

/** Hands a text to the browser as a file to keep. */
export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name.replace(NOT_IN_NAMES, ' ').trim();
  link.click();
  // The download may begin only after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Without it some spreadsheets take the letters for those of another alphabet. */
const BYTE_ORDER_MARK = '\uFEFF';

/** Hands comma-separated text to the browser as a file for a spreadsheet. */
export function saveTable(name: string, text: string): void {
  saveFile(`${name}.csv`, 'text/csv;charset=utf-8', BYTE_ORDER_MARK + text);
}
