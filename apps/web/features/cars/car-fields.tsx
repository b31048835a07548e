import type { CarRow } from '@halfshaft/contract';
import type { UseFormRegisterReturn } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import { TextField } from '@/components/text-field';
import { DRIVE_CHOICES, SURFACE_CHOICES } from './car-words';

/** A car as typed; nothing is chosen for the person. */
export interface CarForm {
  name: string;
  drive: CarRow['drive'] | '';
  surface: CarRow['surface'] | '';
}

export interface CarFieldsProps {
  inputs: Record<keyof CarForm, UseFormRegisterReturn>;
  errors: Partial<Record<keyof CarForm, { message?: string | undefined }>>;
}

/** What describes a car, in a form for a new one and for one that is there. */
export function CarFields({ inputs, errors }: CarFieldsProps) {
  return (
    <>
      <TextField
        label="Name"
        hint="As the team calls it."
        autoComplete="off"
        error={errors.name?.message}
        {...inputs.name}
      />
      <ChoiceGroup
        label="Drive"
        choices={DRIVE_CHOICES}
        across
        error={errors.drive?.message}
        {...inputs.drive}
      />
      <ChoiceGroup
        label="Surface it is set up for"
        choices={SURFACE_CHOICES}
        across
        error={errors.surface?.message}
        {...inputs.surface}
      />
    </>
  );
}
