import type { CarRow } from '@halfshaft/contract';
import type { FieldErrors, UseFormRegister } from 'react-hook-form';
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
  register: UseFormRegister<CarForm>;
  errors: FieldErrors<CarForm>;
}

export function CarFields({ register, errors }: CarFieldsProps) {
  return (
    <>
      <TextField
        label="Name"
        hint="As the team calls it."
        autoComplete="off"
        error={errors.name?.message}
        {...register('name')}
      />
      <ChoiceGroup
        label="Drive"
        choices={DRIVE_CHOICES}
        across
        error={errors.drive?.message}
        {...register('drive')}
      />
      <ChoiceGroup
        label="Surface it is set up for"
        choices={SURFACE_CHOICES}
        across
        error={errors.surface?.message}
        {...register('surface')}
      />
    </>
  );
}
