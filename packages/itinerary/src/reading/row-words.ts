import { foldWords } from './fold-words';

const LEG =
  /^(?:leg|day|etappe|tag|etape|jour|journee|etapa|dia|jornada|tappa|giorno|giornata)(?![a-z])(?: (?:no |nr |n )?(\d{1,3})(?![\d]))?/;
const SECTION = /^(?:section|sec|sektion|abschnitt|seccion|sezione) (\d{1,4})$/;
const TOTAL = /\b(?:sub ?)?(?:totals?|gesamt|gesamtsumme|summen?|totaux|totale|totali|totales)\b/;

/** Whether a line opens a leg, and the number it gives; null when it does not. */
export function legOf(line: string): { number: number | null } | null {
  const match = LEG.exec(foldWords(line));
  return match ? { number: match[1] === undefined ? null : Number(match[1]) } : null;
}

/** The number of a line that is only a section's heading, else null. */
export function sectionOf(line: string): number | null {
  const number = SECTION.exec(foldWords(line))?.[1];
  return number === undefined ? null : Number(number);
}

/** Whether a row's first words announce sums. */
export function isTotalTitle(title: string): boolean {
  return TOTAL.test(foldWords(title));
}

/** What a row of sums sums up. A plain "Total" may be any. */
export function totalScope(title: string): 'section' | 'leg' | 'event' | 'any' {
  const words = foldWords(title);
  if (/\b(?:event|rally|rallye|overall|grand|veranstaltung|epreuve)\b/.test(words)) return 'event';
  if (/\b(?:section|sektion|abschnitt|seccion|sezione)\b/.test(words)) return 'section';
  if (/\b(?:leg|day|etappe|tag|etape|jour|journee|etapa|dia|tappa|giorno)\b/.test(words)) return 'leg';
  return 'any';
}
