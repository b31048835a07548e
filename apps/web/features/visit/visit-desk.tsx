'use client';

import { useForm, useWatch } from 'react-hook-form';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { useKeptForm } from '@/lib/keep-typed';
import { CarQuestions } from './car-questions';
import { ItineraryBox } from './itinerary-box';
import { MoreSettings } from './more-settings';
import { SheetStep } from './sheet-step';
import { useSheet } from './use-sheet';
import styles from './visit-desk.module.css';
import { VISIT_KEY, type VisitForm } from './visit-form';

export function VisitDesk({ start }: { start: VisitForm }) {
  const form = useForm<VisitForm>({ defaultValues: start });
  const { restored, clear } = useKeptForm(VISIT_KEY, form);
  // Every field has a value from the beginning, which the type of useWatch does not tell.
  const values = useWatch({ control: form.control }) as VisitForm;
  const reading = useSheet(values);

  function startAfresh() {
    clear();
    form.reset(start);
  }

  return (
    <div className={styles.desk}>
      <div className={`${styles.steps} screen-only`}>
        <PageHeader title="Plan a service" />
        <p className={styles.lead}>
          Three steps, no account. Everything is worked out on this device, and what you type stays on it.
        </p>
        {restored ? (
          <Notice title="What you typed last time is back">
            <div>
              <Button onClick={startAfresh}>Start afresh</Button>
            </div>
          </Notice>
        ) : null}
        <Sheet title="1. Car and people">
          <CarQuestions form={form} problems={reading.fields} />
        </Sheet>
        <Sheet title="2. Itinerary">
          <ItineraryBox form={form} values={values} reading={reading} />
          <MoreSettings form={form} values={values} reading={reading} />
        </Sheet>
      </div>
      <SheetStep form={form} values={values} reading={reading} />
    </div>
  );
}
