import type { StageId } from '@halfshaft/itinerary';
import type { ReactNode } from 'react';
import { TextField } from '@/components/text-field';
import type { Visit } from '../service/visit';
import { serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { WhenField } from './when-field';

export interface WhenAndWordsProps {
  work: LoadedWork;
  visit: Visit;
  /** The likeliest first. */
  stages: readonly StageId[];
  /** A stage, or empty for at the service. */
  stageId: StageId | '';
  onChooseStage: (stageId: StageId | '') => void;
  words: string;
  onType: (words: string) => void;
  /** Stands between the two. */
  children?: ReactNode;
}

/** The end of what is written down of a car: when it was, and a few words. */
export function WhenAndWords(props: WhenAndWordsProps) {
  const { work, visit, stages, stageId, onChooseStage, words, onType, children } = props;
  const serviceName = serviceNameOf(work.replica, visit.service.id);
  return (
    <>
      <WhenField stages={stages} serviceName={serviceName} stageId={stageId} onChoose={onChooseStage} />
      {children}
      <TextField
        label="In a few words"
        optional
        maxLength={300}
        value={words}
        onChange={({ target }) => onType(target.value)}
      />
    </>
  );
}
