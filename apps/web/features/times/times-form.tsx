import type { getTimesOutput } from '@halfshaft/contract';
import { DEFAULT_PENALTY_RULES, type Itinerary, readTimeList } from '@halfshaft/itinerary';
import { useQueryClient } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import type { z } from 'zod';
import { NumberField } from '@/components/number-field';
import { api, client } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { ListForm } from '../organiser/list-form';
import type { OwnEvent } from '../organiser/list-page';
import { readMaximum } from './read-maximum';
import { TimesPreview } from './times-preview';

type Saved = z.infer<typeof getTimesOutput>['saved'];

export interface TimesFormProps {
  own: OwnEvent;
  itinerary: Itinerary;
  saved: Saved;
}

const COMMON_MAXIMUM = DEFAULT_PENALTY_RULES.maxLateMinutesAtControl ?? 0;

/** The box of the times, with how late the event lets a car be, and what the list says before it is saved. */
export function TimesForm({ own, itinerary, saved }: TimesFormProps) {
  const start = { maximum: String(saved?.maxLateMinutes ?? COMMON_MAXIMUM) };
  const form = useForm<typeof start>({ defaultValues: start });
  const kept = useKeptForm(`times.maximum.${own.publishedEventId}`, form);
  const queries = useQueryClient();
  const maximum = readMaximum(form.watch('maximum'));

  async function save(source: string, replaces: number | null) {
    if (maximum === null) {
      form.setFocus('maximum');
      return null;
    }
    const list = { ...own, source, maxLateMinutes: maximum, replaces };
    const answer = await client.timeList.save.mutate(list);
    if (!answer.ok) return answer;
    kept.clear();
    await queries.invalidateQueries({ queryKey: api.timeList.pathKey() });
    const { times, savedAt } = answer;
    const words = times === 1 ? '1 time is on the list.' : `${times} times are on the list.`;
    return { ok: true as const, savedAt, words };
  }

  return (
    <ListForm
      keptAs={`times.${own.publishedEventId}`}
      label="Who came to which control, and when"
      hint="Paste it from a spreadsheet: a row of headings, then a row for each car at each control. Leave out the names of people."
      saveWords="Save the times"
      fileWords="a list of times"
      saved={saved}
      problemsOf={(source) => readTimeList(source, itinerary).problems}
      save={save}
    >
      {(source) => (
        <>
          <NumberField
            label="Maximum lateness at a control"
            hint="As the event’s regulations have it."
            unit="min"
            whole
            error={maximum === null ? 'Type whole minutes, from 0 to 720.' : undefined}
            {...form.register('maximum')}
          />
          {source === saved?.source && maximum === saved.maxLateMinutes ? null : (
            <TimesPreview source={source} itinerary={itinerary} maxLateMinutes={maximum} />
          )}
        </>
      )}
    </ListForm>
  );
}
