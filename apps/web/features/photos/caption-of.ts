import { type EntryNames, type Photo, taskRefOf } from '@halfshaft/worklog';

/**
 * What a photo is of, for its dialog and for who cannot see it.
 *
 * @example
 * captionOf(photo, names) // 'Wheel nuts, Service B: FL needs work, thread torn'
 */
export function captionOf(
  { fact }: Pick<Photo, 'fact'>,
  { task, service }: Pick<EntryNames, 'task' | 'service'>,
): string {
  const ref = taskRefOf(fact.of);
  const what = `${task(ref)}, ${service(ref.serviceId)}`;
  return fact.words === '' ? what : `${what}: ${fact.words}`;
}
