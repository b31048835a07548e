import { type CarFact, type CarSetting, type FactPlace, type PersonId, settingsOf } from '@halfshaft/worklog';
import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import type { Visit } from '../service/visit';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';
import { AskedBy, type Asker } from './asked-by';
import { SettingDialog } from './setting-dialog';
import { SettingLine } from './setting-line';
import styles from './settings.module.css';

interface SettingSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
}

/** What was changed on the car at this event, from what to what, and the way back to base in one tap. */
export function SettingSheet({ work, visit, by }: SettingSheetProps) {
  const { state, replica } = work;
  const { entryId } = visit.entry;
  const [askedBy, setAskedBy] = useState<Asker>('driver');
  /** Null: closed. `of` null: a setting not changed so far. */
  const [open, setOpen] = useState<{ of: CarSetting | null } | null>(null);
  const settings = useMemo(
    () => settingsOf(state.facts.values(), entryId, replica.itinerary),
    [state, entryId, replica],
  );
  const here: FactPlace = { kind: 'service', serviceId: visit.service.id };
  const record = (fact: CarFact, at: FactPlace) =>
    work.act('recordFact', { factId: newId(), entryId, at, fact }, by);
  const goBack = ({ setting, position, current, base }: CarSetting) =>
    record({ kind: 'setting', setting, position, from: current, to: base, askedBy, backToBase: true }, here);
  return (
    <Sheet title="Setting changes">
      <Stack>
        {settings.length === 0 ? (
          <EmptyState title="Nothing changed so far">
            <p>Write down what is changed and from what, so that it can be put back.</p>
          </EmptyState>
        ) : (
          <ul className={styles.list}>
            {settings.map((each) => (
              <SettingLine
                key={`${each.setting} ${each.position}`}
                setting={each}
                onBack={() => goBack(each)}
                onChange={() => setOpen({ of: each })}
              />
            ))}
          </ul>
        )}
        <div className="screen-only">
          <Stack>
            {settings.some((each) => each.base !== '' && !each.isAtBase) ? (
              <AskedBy label="Who asks for going back to base?" chosen={askedBy} onChoose={setAskedBy} />
            ) : null}
            <div>
              <Button onClick={() => setOpen({ of: null })}>Change a setting</Button>
            </div>
          </Stack>
        </div>
      </Stack>
      {open === null ? null : (
        <SettingDialog {...{ work, visit, record }} of={open.of} onClose={() => setOpen(null)} />
      )}
    </Sheet>
  );
}
