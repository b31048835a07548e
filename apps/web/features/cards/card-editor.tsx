'use client';

import { cardBody } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import { useMutation } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from '../events/contract-resolver';
import { RestoredNotice } from '../events/restored-notice';
import { setFieldProblems } from '../events/set-field-problems';
import { SaveTrouble } from '../events/trouble';
import { useFirstProblemFocus } from '../events/use-first-problem-focus';
import { type CardForm, NEW_CARD } from './card-form';
import { cardToForm } from './card-to-form';
import { EssentialFields } from './essential-fields';
import { formToCard } from './form-to-card';
import { MoreFields } from './more-fields';
import { placeCardProblem } from './place-card-problem';

export interface CardEditorProps {
  teamId: string;
  carId: string;
  /** Null for a new one. */
  card: JobCard | null;
  onSaved: () => void;
}

export function CardEditor({ teamId, carId, card, onSaved }: CardEditorProps) {
  const saved = card ? cardToForm(card) : NEW_CARD;
  const form = useForm<CardForm>({
    defaultValues: saved,
    shouldFocusError: false,
    resolver: contractResolver<CardForm>(cardBody, (values) => formToCard(values, card), placeCardProblem),
  });
  const kept = useKeptForm(`card.${carId}.${card?.id ?? 'new'}`, form);
  const mutation = useMutation(api.card.save.mutationOptions());
  const { errors, submitCount } = form.formState;
  const element = useFirstProblemFocus(submitCount, Object.keys(errors).length > 0);

  const save = form.handleSubmit(async (values) => {
    try {
      const body = cardBody.parse(formToCard(values, card));
      await mutation.mutateAsync({ teamId, carId, cardId: card?.id ?? null, card: body });
      kept.clear();
      onSaved();
    } catch (error) {
      setFieldProblems(form, problemOf(error), placeCardProblem);
    }
  });

  return (
    <form noValidate onSubmit={save} ref={element}>
      <Stack>
        <RestoredNotice
          restored={kept.restored}
          onStartAfresh={() => {
            form.reset(saved);
            kept.clear();
          }}
        />
        <EssentialFields form={form} />
        <Disclosure summary="More">
          <Stack>
            <MoreFields form={form} />
          </Stack>
        </Disclosure>
        <SaveTrouble problem={mutation.error ? problemOf(mutation.error) : null} />
        <Stack across>
          <Button type="submit" look="main" busy={mutation.isPending} busyWords="Saving …">
            Save the card
          </Button>
        </Stack>
      </Stack>
    </form>
  );
}
