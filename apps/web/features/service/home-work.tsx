import type { EntryReplica } from '@halfshaft/contract';
import { type JobCard, neededPersonSeconds } from '@halfshaft/lifing';
import type { CardId } from '@halfshaft/worklog';
import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Dialog } from '@/components/dialog';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { minutesOfWork } from '../visit/time-in-words';
import { nameOf } from '../work/names';
import { newId } from '../work/new-id';
import type { OpenedWork } from '../work/use-event-work';
import { homePreparation } from './home-preparation';

interface HomeWorkProps {
  work: OpenedWork;
  entry: EntryReplica;
}

/** Asks once, in one tap, whether what falls due by the first service was done at home; then says who said so. */
export function HomeWork({ work, entry }: HomeWorkProps) {
  const { replica, state, act } = work;
  const preparation = useMemo(() => homePreparation(replica, state, entry), [replica, state, entry]);
  const me = replica.me.personId;
  if (preparation === null || work.status === 'loading' || work.status === 'failed') return null;
  if (preparation.kind === 'told') {
    const { count, by, actionId } = preparation;
    return (
      <Stack across gap="small">
        <p>
          Prepared at home: {jobs(count)} done before the start, entered by {nameOf(replica, by)}.
        </p>
        <Button
          look="quiet"
          aria-label={`Take back that car ${entry.carNumber} was prepared at home`}
          onClick={() => act('undo', { actionId }, me)}
        >
          Take back
        </Button>
      </Stack>
    );
  }
  const say = (cardIds: CardId[]) =>
    act(
      'recordFact',
      {
        factId: newId(),
        entryId: entry.entryId,
        at: { kind: 'road', afterStageId: null },
        fact: { kind: 'prepared', cardIds },
      },
      me,
    );
  return <Question cards={preparation.cards} carNumber={entry.carNumber} onSay={say} />;
}

interface QuestionProps {
  cards: readonly JobCard[];
  carNumber: string;
  onSay: (cardIds: CardId[]) => void;
}

function Question({ cards, carNumber, onSay }: QuestionProps) {
  const [choosing, setChoosing] = useState(false);
  return (
    <Notice title={`Was car ${carNumber} prepared at home?`}>
      <p>
        {jobs(cards.length)} ({minutesOfWork(neededPersonSeconds(cards))} person-minutes) fall due by the
        first service, such as what is looked at every day. Say what was done before the start, and the
        service asks for the rest only.
      </p>
      <Stack across gap="small">
        <Button look="main" onClick={() => onSay(cards.map(({ id }) => id))}>
          All of it was done
        </Button>
        <Button onClick={() => setChoosing(true)}>Part of it …</Button>
      </Stack>
      {choosing ? <PartDialog cards={cards} onSay={onSay} onClose={() => setChoosing(false)} /> : null}
    </Notice>
  );
}

interface PartDialogProps extends Pick<QuestionProps, 'cards' | 'onSay'> {
  onClose: () => void;
}

function PartDialog({ cards, onSay, onClose }: PartDialogProps) {
  const [chosen, setChosen] = useState(() => cards.map(({ id }) => id));
  const [asked, setAsked] = useState(false);
  const toggle = (id: CardId) =>
    setChosen(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  return (
    <Dialog
      open
      onClose={onClose}
      title="Done before the start"
      closeWords="Not yet"
      actions={
        <Button look="main" onClick={() => (chosen.length === 0 ? setAsked(true) : onSay(chosen))}>
          {chosen.length === 1 ? 'This job was done' : `These ${chosen.length} jobs were done`}
        </Button>
      }
    >
      <ChoiceGroup
        label="Take out what was not done"
        pick="many"
        choices={cards.map(({ id, name }) => ({ value: id, label: name }))}
        chosen={chosen}
        error={asked && chosen.length === 0 ? 'Choose what was done, or close this.' : undefined}
        onChange={(event) => toggle(event.target.value)}
      />
    </Dialog>
  );
}

function jobs(count: number): string {
  return count === 1 ? '1 job' : `${count} jobs`;
}
