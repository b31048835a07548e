'use client';

import { dueAt, formatClock } from '@halfshaft/itinerary';
import type { UseFormReturn } from 'react-hook-form';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { PrintButton } from '@/components/print-button';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { ServicePaper } from './service-paper';
import { positionsOfVisit, serviceName } from './sheet';
import { SheetClock } from './sheet-clock';
import styles from './sheet-step.module.css';
import { minutesOfTime } from './time-in-words';
import type { VisitReading } from './use-sheet';
import type { VisitForm } from './visit-form';

interface SheetStepProps {
  form: UseFormReturn<VisitForm>;
  values: VisitForm;
  reading: VisitReading;
}

/** The third step: the sheet, or what is still missing for it. */
export function SheetStep({ form, values, reading }: SheetStepProps) {
  const { itinerary, sheet } = reading;
  return (
    <section className={styles.step} aria-labelledby="sheet-step">
      <h2 id="sheet-step" className="screen-only">
        3. The sheet
      </h2>
      {itinerary && sheet ? (
        <>
          <div className={`${styles.tools} screen-only`}>
            <ServiceChoice form={form} reading={reading} />
            <SheetClock sheet={sheet} timeZone={itinerary.timeZone} />
            <Stack across gap="small">
              <PrintButton
                look="main"
                foot={[serviceName(sheet.service), values.eventName.trim()].filter(Boolean).join(', ')}
              >
                Print the sheet
              </PrintButton>
              <LinkButton href="/sign-up/?keep=visit">Keep this: make an account</LinkButton>
            </Stack>
            <p className={styles.hint}>
              With an account the team ticks on the phone, and every later service knows what was done.
            </p>
          </div>
          <ServicePaper sheet={sheet} eventName={values.eventName} timeZone={itinerary.timeZone} />
        </>
      ) : (
        <Missing reading={reading} />
      )}
    </section>
  );
}

function ServiceChoice({ form, reading }: Pick<SheetStepProps, 'form' | 'reading'>) {
  const { services, itinerary, sheet, visit } = reading;
  if (!itinerary || !sheet || !visit || services.length < 2) return null;
  const positions = positionsOfVisit(visit);
  return (
    <SelectField
      label="Service"
      options={services.map((service) => {
        const at = dueAt(itinerary, service.inIndex, positions);
        const minutes = minutesOfTime(service.allowedSeconds);
        return {
          value: service.id,
          label: `${serviceName(service)} · ${minutes} min · leg ${service.leg}, in ${formatClock(at, itinerary.timeZone)}`,
        };
      })}
      value={sheet.service.id}
      onChange={(event) => form.setValue('service', event.target.value, { shouldDirty: true })}
    />
  );
}

function Missing({ reading }: { reading: VisitReading }) {
  const sentences = Object.entries(reading.fields);
  if (sentences.length > 0) {
    return (
      <Notice kind="problem" title="The sheet waits for this">
        <ul className={styles.waits}>
          {sentences.map(([field, sentence]) => (
            <li key={field}>{sentence}</li>
          ))}
        </ul>
      </Notice>
    );
  }
  if (reading.itinerary) {
    return (
      <EmptyState title="There is no service in this itinerary.">
        A service is two controls whose location says “Service in” and “Service out”. Name them so in the
        table above.
      </EmptyState>
    );
  }
  if (reading.problems.length > 0) {
    return (
      <EmptyState title="The sheet waits for the itinerary.">
        Mend what is marked in the table above; the sheet then stands here by itself.
      </EmptyState>
    );
  }
  return (
    <EmptyState title="Here the sheet will stand.">
      Paste an itinerary above, begin with loops, or use the example: what must be done at Service A, by
      person, ready to print.
    </EmptyState>
  );
}
