import type { CarSetting } from '@halfshaft/worklog';

/** Where a setting can be; the value is what the log keeps. */
export const SETTING_POSITIONS = [
  { value: '', label: 'The whole car' },
  { value: 'front', label: 'Front' },
  { value: 'rear', label: 'Rear' },
  { value: 'FL', label: 'Front left' },
  { value: 'FR', label: 'Front right' },
  { value: 'RL', label: 'Rear left' },
  { value: 'RR', label: 'Rear right' },
] as const;

/**
 * "Bump, front left" · "Brake balance".
 *
 * @example
 * settingName({ setting: 'Bump', position: 'FL' }) // 'Bump, front left'
 */
export function settingName({ setting, position }: Pick<CarSetting, 'setting' | 'position'>): string {
  if (position === null) return setting;
  const known = SETTING_POSITIONS.find(({ value }) => value === position);
  return `${setting}, ${known ? known.label.toLowerCase() : position}`;
}
