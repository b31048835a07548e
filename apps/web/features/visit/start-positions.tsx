import type { Itinerary } from '@halfshaft/itinerary';
import type { UseFormReturn } from 'react-hook-form';
import { NumberField } from '@/components/number-field';
import { laterSections } from '../events/later-sections';
import { positionField } from '../events/position-form';
import type { VisitReading } from './use-sheet';
import type { VisitForm } from './visit-form';

export interface StartPositionsProps {
  form: UseFormReturn<VisitForm>;
  values: VisitForm;
  reading: VisitReading;
}

/** Where the car starts, and where it starts again when the order is set anew. */
export function StartPositions({ form, values, reading }: StartPositionsProps) {
  const { itinerary, fields } = reading;
  const typed = new Set(
    Object.entries(values.laterPositions).flatMap(([field, text]) => (text.trim() === '' ? [] : [field])),
  );
  const sections = itinerary ? laterSections(itinerary) : [];
  // A figure that is none keeps the itinerary from being read; its box must not go away with that.
  const shown = new Set([...sections.map(positionField), ...typed]);
  return (
    <>
      <NumberField
        label="Start position of your car"
        whole
        hint="1 for the first car on the road. It sets your own times."
        error={fields.startPosition}
        {...form.register('startPosition')}
      />
      {[...shown].sort(bySection).map((field) => (
        <NumberField
          key={field}
          label={`Starts again in Section ${field.slice(1)} in position`}
          whole
          optional
          hint={sectionInWords(itinerary, Number(field.slice(1)))}
          error={isPosition(values.laterPositions[field]) ? undefined : fields.laterPositions}
          {...form.register(`laterPositions.${field}`)}
        />
      ))}
    </>
  );
}

function bySection(one: string, other: string): number {
  return Number(one.slice(1)) - Number(other.slice(1));
}

function isPosition(text = ''): boolean {
  return text.trim() === '' || /^ *[1-9]\d{0,2} *$/.test(text);
}

function sectionInWords(itinerary: Itinerary | null, section: number): string | undefined {
  const first = itinerary?.points.find((point) => point.section === section);
  return first ? `From ${first.id} ${first.name} on, leg ${first.leg}.` : undefined;
}
