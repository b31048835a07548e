'use client';

import { type EventReplica, plannedConditions } from '@halfshaft/contract';
import type { ConditionName, StagePoint } from '@halfshaft/itinerary';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { api, problemOf } from '@/lib/api';
import * as z from '@/lib/zod';
import { CONDITION_NAMES, levelInWords } from '../bay/conditions-in-words';
import { useDraft } from '../bay/use-draft';
import { SaveTrouble } from '../events/trouble';
import styles from './conditions.module.css';
import { type Planned, tapCondition } from './planned-draft';
import { stagesOf } from './stages-of';

const NAMES = Object.keys(CONDITION_NAMES) as ConditionName[];
const plannedDraft = z.object({ planned: plannedConditions });

interface EditPlannedProps {
  teamId: string;
  event: EventReplica;
  onClose: () => void;
}

/** A row of conditions for each stage, each a tap or two. What is half filled in is kept until it is saved. */
export function EditPlanned({ teamId, event, onClose }: EditPlannedProps) {
  const { eventId } = event;
  const [{ planned }, setDraft, clearDraft] = useDraft(`conditions.${eventId}`, plannedDraft, {
    planned: event.plannedConditions,
  });
  const queries = useQueryClient();
  const update = useMutation(api.event.setConditions.mutationOptions());

  async function save() {
    try {
      await update.mutateAsync({ teamId, eventId, conditions: planned });
    } catch {
      return; // told below, from `update.error`
    }
    clearDraft();
    await queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) });
    onClose();
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title="What the stages will be like"
      closeWords="Not yet"
      actions={
        <Button look="main" onClick={save} busy={update.isPending} busyWords="Saving …">
          Save
        </Button>
      }
    >
      <p>Tap once for some, twice for bad, a third time for none.</p>
      {stagesOf(event.itinerary).map((stage) => (
        <StageRow
          key={stage.id}
          {...{ stage, planned }}
          onTap={(name) => setDraft({ planned: tapCondition(planned, stage.id, name) })}
        />
      ))}
      <SaveTrouble problem={update.error ? problemOf(update.error) : null} />
    </Dialog>
  );
}

interface StageRowProps {
  stage: StagePoint;
  planned: Planned;
  onTap: (name: ConditionName) => void;
}

function StageRow({ stage, planned, onTap }: StageRowProps) {
  const said = planned[stage.id] ?? {};
  return (
    <fieldset className={styles.stage}>
      <legend>{stage.name === stage.id ? stage.id : `${stage.id} ${stage.name}`}</legend>
      {NAMES.map((name) => {
        const level = levelInWords(said[name] ?? 0);
        return (
          <Button
            key={name}
            className={level === 'none' ? undefined : styles.expected}
            onClick={() => onTap(name)}
          >
            {CONDITION_NAMES[name]}: {level}
          </Button>
        );
      })}
    </fieldset>
  );
}
