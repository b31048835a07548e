import { askerInWords, SETTING_ASKERS } from '@halfshaft/worklog';
import { ChoiceGroup } from '@/components/choice-group';

export type Asker = (typeof SETTING_ASKERS)[number];

const CHOICES = SETTING_ASKERS.map((asker) => ({ value: asker, label: askerInWords(asker) }));

interface AskedByProps {
  label: string;
  chosen: Asker;
  onChoose: (asker: Asker) => void;
}

/** Who wanted the change: the one to ask whether it helped. */
export function AskedBy({ label, chosen, onChoose }: AskedByProps) {
  return (
    <ChoiceGroup
      label={label}
      across
      choices={CHOICES}
      chosen={[chosen]}
      onChange={(event) => onChoose(event.target.value as Asker)}
    />
  );
}
