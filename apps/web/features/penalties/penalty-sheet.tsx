'use client';

import type { EventReplica } from '@halfshaft/contract';
import { PENALTY_PRESETS } from '@halfshaft/itinerary';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from '../events/contract-resolver';
import { RestoredNotice } from '../events/restored-notice';
import { setFieldProblems } from '../events/set-field-problems';
import { SaveTrouble } from '../events/trouble';
import { useFirstProblemFocus } from '../events/use-first-problem-focus';
import { PenaltyFields } from './penalty-fields';
import { formToRules, type PenaltyForm, placePenaltyProblem, presetOf, rulesToForm } from './penalty-form';
import { rulesInWords } from './rules-in-words';
import { penaltyRulesAt } from './rules-schema';

interface PenaltySheetProps {
  teamId: string;
  event: EventReplica;
  mayManage: boolean;
}

/** By what rules lateness at this event is reckoned, and for managers the way to change them. */
export function PenaltySheet({ teamId, event, mayManage }: PenaltySheetProps) {
  const [editing, setEditing] = useState(false);
  const preset = presetOf(event.penaltyRules);
  return (
    <Sheet
      title="Lateness and penalties"
      aside={
        mayManage ? (
          <Button look="quiet" aria-label="Change lateness and penalties" onClick={() => setEditing(true)}>
            Change
          </Button>
        ) : null
      }
    >
      <Stack gap="small">
        {rulesInWords(event.penaltyRules).map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p>{preset ? `${preset.title}. Source: ${preset.source}.` : 'Set by this team.'}</p>
        <p>The event’s regulations decide. Compare these settings with them.</p>
      </Stack>
      {mayManage ? (
        <EditPenalties
          key={JSON.stringify(event.penaltyRules)}
          {...{ teamId, event }}
          open={editing}
          onClose={() => setEditing(false)}
        />
      ) : null}
    </Sheet>
  );
}

interface EditPenaltiesProps {
  teamId: string;
  event: EventReplica;
  open: boolean;
  onClose: () => void;
}

function EditPenalties({ teamId, event, open, onClose }: EditPenaltiesProps) {
  const { eventId } = event;
  const saved = rulesToForm(event.penaltyRules);
  const schema = useMemo(() => penaltyRulesAt(event.itinerary), [event.itinerary]);
  const form = useForm<PenaltyForm>({
    defaultValues: saved,
    shouldFocusError: false,
    resolver: contractResolver<PenaltyForm>(schema, formToRules, placePenaltyProblem),
  });
  const kept = useKeptForm(`penalties.${eventId}`, form);
  const queries = useQueryClient();
  const update = useMutation(api.event.setPenalties.mutationOptions());
  const chosen = presetOf(formToRules(form.watch()));
  const { errors, submitCount } = form.formState;
  const element = useFirstProblemFocus(submitCount, Object.keys(errors).length > 0);
  // A kind of control no longer in the itinerary stays while this form is open, so that a slip can be taken back.
  const [offered, setOffered] = useState(saved.earlyAllowedAt);

  const save = form.handleSubmit(async (values) => {
    try {
      await update.mutateAsync({ teamId, eventId, rules: schema.parse(formToRules(values)) });
      form.reset(values);
      kept.clear();
      onClose();
      await queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) });
    } catch (error) {
      setFieldProblems(form, problemOf(error), placePenaltyProblem);
    }
  });

  function fillIn(id: string) {
    const preset = PENALTY_PRESETS.find((one) => one.id === id);
    if (!preset) return;
    setOffered([...offered, ...preset.rules.earlyAllowedAt]);
    form.reset(rulesToForm(preset.rules), { keepDefaultValues: true });
  }

  return (
    <Dialog
      open={open}
      onClose={onClose}
      title="Lateness and penalties"
      actions={
        <Button look="main" onClick={save} busy={update.isPending} busyWords="Saving …">
          Save
        </Button>
      }
    >
      <form noValidate onSubmit={save} ref={element}>
        <Stack>
          <RestoredNotice
            restored={kept.restored}
            onStartAfresh={() => {
              form.reset(saved);
              kept.clear();
            }}
          />
          <SelectField
            label="Begin with"
            hint={
              chosen
                ? `Source: ${chosen.source}.`
                : 'Own figures. The event’s regulations have the last word.'
            }
            unchosen="Own figures"
            value={chosen?.id ?? ''}
            onChange={(change) => fillIn(change.target.value)}
            options={PENALTY_PRESETS.map(({ id, title }) => ({ value: id, label: title }))}
          />
          <p>The event’s regulations decide. Compare every figure with them.</p>
          <PenaltyFields {...{ form, offered }} itinerary={event.itinerary} />
          <SaveTrouble problem={update.error ? problemOf(update.error) : null} />
          <button type="submit" hidden />
        </Stack>
      </form>
    </Dialog>
  );
}
