import { decodeText } from './decode-text';

/** A file this large is something else than a table somebody wrote. */
const MOST_FILE_BYTES = 2_000_000;

export type FileText = { ok: true; text: string } | { ok: false; says: string };

/**
 * The text of a CSV file that a person chose, with its lines as a text box keeps them; or a sentence that says why it is
 * none.
 *
 * @param what it should hold: "a table of cards"
 */
export async function textOfFile(file: File, what: string): Promise<FileText> {
  const refuse = (says: string) => ({ ok: false as const, says });
  if (file.size > MOST_FILE_BYTES)
    return refuse(`${file.name} is too large for ${what}. Save that alone as CSV.`);
  try {
    const text = decodeText(new Uint8Array(await file.arrayBuffer()));
    // A spreadsheet's own file is a packed one: nothing a person reads has a NUL in it.
    if (text.includes('\0'))
      return refuse(`${file.name} is no text. In the spreadsheet, save it as CSV and choose that.`);
    return { ok: true, text: text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n') };
  } catch {
    return refuse(`${file.name} could not be read. Choose it again, or paste its rows below.`);
  }
}
