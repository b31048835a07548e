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
