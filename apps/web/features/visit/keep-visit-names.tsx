'use client';

import { keepVisitInput } from '@halfshaft/contract';
import { zodResolver } from '@hookform/resolvers/zod';
import { useForm } from 'react-hook-form';
import type { z } from 'zod';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { TextField } from '@/components/text-field';
import { problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { SaveTrouble } from '../events/trouble';
import styles from './keep-visit.module.css';

export const KEPT_NAMES_KEY = 'keep-visit';

const namesForm = keepVisitInput.pick({ teamName: true, personName: true, eventName: true });
export type KeptNames = z.infer<typeof namesForm>;

interface KeepVisitNamesProps {
  names: KeptNames;
  busy: boolean;
  error: unknown;
  onKeep: (names: KeptNames) => void;
}

export function KeepVisitNames({ names, busy, error, onKeep }: KeepVisitNamesProps) {
  const form = useForm<KeptNames>({ resolver: zodResolver(namesForm), defaultValues: names });
  useKeptForm(KEPT_NAMES_KEY, form);
  const { errors } = form.formState;
  return (
    <Sheet>
      <form className={styles.form} onSubmit={form.handleSubmit(onKeep)} noValidate>
        <TextField
          label="Name of the team"
          autoComplete="organization"
          error={errors.teamName?.message}
          {...form.register('teamName')}
        />
        <TextField
          label="Your name, as the team knows you"
          autoComplete="name"
          error={errors.personName?.message}
          {...form.register('personName')}
        />
        <TextField
          label="Name of the event"
          autoComplete="off"
          error={errors.eventName?.message}
          {...form.register('eventName')}
        />
        <SaveTrouble problem={error == null ? null : problemOf(error)} />
        <div>
          <Button type="submit" look="main" busy={busy} busyWords="Keeping it …">
            Keep it
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
