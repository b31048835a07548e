import type { UseFormReturn } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import { NumberField } from '@/components/number-field';
import type { VisitField, VisitForm } from './visit-form';

const DRIVES = [
  { value: 'front', label: 'Front' },
  { value: 'rear', label: 'Rear' },
  { value: 'four', label: 'All four' },
];
const SURFACES = [
  { value: 'gravel', label: 'Gravel' },
  { value: 'tarmac', label: 'Tarmac' },
  { value: 'snow', label: 'Snow' },
];

interface CarQuestionsProps {
  form: UseFormReturn<VisitForm>;
  problems: Partial<Record<VisitField, string>>;
}

export function CarQuestions({ form, problems }: CarQuestionsProps) {
  return (
    <>
      <ChoiceGroup
        label="Driven wheels"
        choices={DRIVES}
        across
        error={problems.drive}
        {...form.register('drive')}
      />
      <ChoiceGroup
        label="Surface"
        choices={SURFACES}
        across
        error={problems.surface}
        {...form.register('surface')}
      />
      <NumberField
        label="People who work on the car"
        whole
        hint="Without driver and co-driver."
        error={problems.people}
        {...form.register('people')}
      />
    </>
  );
}
