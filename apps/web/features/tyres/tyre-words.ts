import {
  type FactPlace,
  type TyreMeasure,
  type TyrePlace,
  type TyreUse,
  tyrePlaceInWords,
} from '@halfshaft/worklog';
import { capitalise } from '@/lib/capitalise';

/** Lowest tread on public roads, in tenths of a millimetre: 1.6 mm (Council Directive 89/459/EEC, and UK law). */
export const LEGAL_TREAD_TENTHS = 16;

/** "Front left", to head something. */
export function placeTitle(place: TyrePlace): string {
  return capitalise(tyrePlaceInWords(place));
}

/** "L1, medium" · "L1". */
export function tyreName({ mark, compound }: Pick<TyreUse, 'mark' | 'compound'>): string {
  return compound === '' ? mark : `${mark}, ${compound}`;
}

/** "2 stages, 24.3 km" · "no stage yet". */
export function distanceInWords({ stages, stageMetres }: Pick<TyreUse, 'stages' | 'stageMetres'>): string {
  if (stages === 0) return 'no stage yet';
  return `${stages === 1 ? '1 stage' : `${stages} stages`}, ${(stageMetres / 1000).toFixed(1)} km`;
}

export const treadInWords = (tenths: number) => `${(tenths / 10).toFixed(1)} mm`;
export const barInWords = (millibar: number) => `${(millibar / 1000).toFixed(2)} bar`;

/** "6.2 mm, Service A"; a dash when never measured. */
export function measureInWords(measure: TyreMeasure | null, toWords: (value: number) => string): string {
  return measure === null ? '–' : `${toWords(measure.value)}, ${shortPlace(measure.at)}`;
}

/** "Service A" · "after SS3" · "before the start", short enough for a table. */
export function shortPlace(at: FactPlace): string {
  if (at.kind === 'service') return `Service ${at.serviceId}`;
  return at.afterStageId === null ? 'before the start' : `after ${at.afterStageId}`;
}
