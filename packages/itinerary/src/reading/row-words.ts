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

const REMARKS: readonly RegExp[] = [
  /^(?:sunrise|sunset|sonnenaufgang|sonnenuntergang|lever du soleil|coucher du soleil|alba|tramonto|amanecer|salida del sol)\b/,
  /\bdistance to (?:the )?next refuel/,
  // Published tables name a visit to service in a line of its own, between its two controls.
  /^(?:remote |flexi )?service (?:park )?[a-z]{1,2}\b(?!.*\b(?:in|out)\b)/,
];

/** Whether a line without a code is one of those that published tables hold beside their rows, and that say nothing more. */
export function isRemark(line: string): boolean {
  const words = foldWords(line);
  return REMARKS.some((remark) => remark.test(words));
}
