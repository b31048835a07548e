import type { UseFormReturn } from 'react-hook-form';
import { NumberField } from '@/components/number-field';
import { TextField } from '@/components/text-field';
import { formToPositions, type PositionForm } from './position-form';
import { readNumber } from './read-number';

/** A car at an event as typed. `carId` is settled when an entry is changed. */
export interface EntryForm {
  carId: string;
  carNumber: string;
  startPosition: string;
  people: string;
  /** Set anew at regroups; none while a car is being entered. */
  laterPositions: PositionForm;
}

/** What is sent. Text that is no number becomes NaN, which the contract refuses at its field. */
export function formToEntry({ carId, carNumber, startPosition, people, laterPositions }: EntryForm) {
  return {
    carId,
    carNumber,
    startPosition: readNumber(startPosition),
    people: readNumber(people),
    positionsBySection: formToPositions(laterPositions),
  };
}

export function EntryFields({ form }: { form: UseFormReturn<EntryForm> }) {
  const { register, formState } = form;
  const { errors } = formState;
  return (
    <>
      <TextField
        label="Car number"
        hint="As on the doors."
        autoComplete="off"
        error={errors.carNumber?.message}
        {...register('carNumber')}
      />
      <NumberField
        label="Start position"
        hint="The place in the start order, not the number on the doors. The printed times are for position 1."
        whole
        error={errors.startPosition?.message}
        {...register('startPosition')}
      />
      <NumberField
        label="People at service"
        hint="Who work on this car."
        whole
        error={errors.people?.message}
        {...register('people')}
      />
    </>
  );
}
