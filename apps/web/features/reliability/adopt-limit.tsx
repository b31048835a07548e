import type { PartOutline } from '@halfshaft/contract';
import { intervalInWords } from '@halfshaft/lifing';
import type { LimitAdvice } from '@halfshaft/reliability';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Notice } from '@/components/notice';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import { TextArea } from '@/components/text-area';
import { api, client, problemOf } from '@/lib/api';
import { useClock } from '@/lib/clock';
import * as z from '@/lib/zod';
import { useDraft } from '../bay/use-draft';
import { COUNTER_UNITS, writeAmount } from '../cards/units';
import { readScaled } from '../events/read-number';
import { SaveTrouble } from '../events/trouble';
import { suggestedEvery } from './advice-in-words';
import { withLimit } from './with-limit';

interface AdoptLimitProps {
  teamId: string;
  carId: string;
  part: PartOutline;
  advice: LimitAdvice;
  onClose: () => void;
}

const shape = z.object({ every: z.string(), note: z.string() });

/** The card's new limit, with a note that stays on the card. The card is read afresh, so that nothing newer is lost. */
export function AdoptLimit({ teamId, carId, part, advice, onClose }: AdoptLimitProps) {
  const { counter, cardId } = part;
  const { factor, decimals, label } = COUNTER_UNITS[counter];
  const every = writeAmount(suggestedEvery(part, advice), factor, decimals);
  const [draft, setDraft, clearDraft] = useDraft(`limit.${cardId}`, shape, {
    every,
    note: noteFor(part, advice, useClock().now()),
  });
  const [problem, setProblem] = useState<string | null>(null);
  const queries = useQueryClient();
  const save = useMutation({
    async mutationFn() {
      const cards = await client.card.list.query({ teamId, carId });
      const card = cards.find(({ id }) => id === cardId);
      if (!card) return 'That card is not in use any more. Nothing was changed.';
      const changed = withLimit(card, { counter, every: readScaled(draft.every, factor), note: draft.note });
      if (!changed.ok) return changed.says;
      await client.card.save.mutate({ teamId, carId, cardId, card: changed.card });
      return null;
    },
    async onSuccess(says) {
      setProblem(says);
      if (says !== null) return;
      clearDraft();
      await queries.invalidateQueries({ queryKey: api.card.pathKey() });
      await queries.invalidateQueries({ queryKey: api.reliability.pathKey() });
      onClose();
    },
  });
  return (
    <Dialog
      open
      onClose={onClose}
      title={`Limit of “${part.name}”`}
      closeWords="Leave it as it is"
      actions={
        <Button look="main" busy={save.isPending} busyWords="Saving …" onClick={() => save.mutate()}>
          Change the limit
        </Button>
      }
    >
      <Stack>
        <NumberField
          label="Every"
          unit={label}
          value={draft.every}
          onChange={({ target }) => setDraft({ ...draft, every: target.value })}
        />
        <TextArea
          label="Note on the card"
          hint="It stands behind the instruction of the card."
          optional
          value={draft.note}
          onChange={({ target }) => setDraft({ ...draft, note: target.value })}
        />
        {problem === null ? null : (
          <Notice kind="problem" title="Not saved" spoken>
            {problem}
          </Notice>
        )}
        <SaveTrouble problem={save.error ? problemOf(save.error) : null} />
      </Stack>
    </Dialog>
  );
}

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

function noteFor({ counter, every }: PartOutline, { fit }: LimitAdvice, now: number): string {
  const before = every === null ? 'before: no limit' : `before: ${intervalInWords({ counter, every })}`;
  return `Limit changed on ${DAY.format(now)}, ${before}; by the log, ${fit.failures} of ${fit.lives} failed.`;
}
