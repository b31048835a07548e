import { formatKilometres } from '@halfshaft/itinerary';
import type { PersonId } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import type { Visit } from '../service/visit';
import { nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import styles from './bay.module.css';
import { conditionsInWords } from './conditions-in-words';
import type { OpenDialog } from './open-dialog';
import { type StageBefore, stagesBefore } from './stages-before';

interface StageSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
  onOpen: (dialog: OpenDialog) => void;
}

/** Which stages were driven, and what they were like: the wear of every card rests on it. */
export function StageSheet({ work, visit, by, onOpen }: StageSheetProps) {
  const stages = stagesBefore(work.replica, work.state, visit);
  const earlier = stages.filter((stage) => !stage.isRecent);
  const line = (each: StageBefore) => (
    <StageLine key={each.stage.id} each={each} work={work} visit={visit} by={by} onOpen={onOpen} />
  );
  if (stages.length === 0) {
    return (
      <Sheet title="Stages so far">
        <p>No stage lies before this service.</p>
      </Sheet>
    );
  }
  return (
    <Sheet title="Stages so far">
      <p>Ask the crew. What nobody confirms counts as planned.</p>
      <ul className={styles.list}>{stages.filter((stage) => stage.isRecent).map(line)}</ul>
      {earlier.length > 0 ? (
        <Disclosure summary={`Before the last service (${earlier.length})`}>
          <ul className={styles.list}>{earlier.map(line)}</ul>
        </Disclosure>
      ) : null}
    </Sheet>
  );
}

function StageLine({ each, work, visit, by, onOpen }: StageSheetProps & { each: StageBefore }) {
  const { stage, said } = each;
  const { entryId } = visit.entry;
  const confirm = (driven: boolean) =>
    work.act('confirmStage', { entryId, stageId: stage.id, driven, conditions: said?.conditions ?? {} }, by);
  return (
    <li className={styles.task}>
      <h3 className={styles.name}>
        {stage.id} {stage.name === stage.id ? '' : stage.name} · {formatKilometres(stage.stageMetres)} km
      </h3>
      <p className={styles.state} aria-live="polite">
        {saidInWords(each, work)}
      </p>
      <div className={styles.buttons}>
        <Button aria-pressed={said?.driven === true} onClick={() => confirm(true)}>
          Driven
        </Button>
        <Button aria-pressed={said?.driven === false} onClick={() => confirm(false)}>
          Not driven
        </Button>
        <Button look="quiet" onClick={() => onOpen({ kind: 'stage', stageId: stage.id })}>
          What was it like?
        </Button>
      </div>
    </li>
  );
}

function saidInWords({ said }: StageBefore, { replica }: LoadedWork): string {
  if (said === null) return 'not confirmed yet';
  const conditions = conditionsInWords(said.conditions);
  const driven = said.driven ? 'driven' : 'not driven';
  return [driven, conditions, `said by ${nameOf(replica, said.confirmedBy)}`].filter(Boolean).join(' · ');
}
