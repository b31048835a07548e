import { type FactPlace, type TyreUse, tyrePlaceInWords } from '@halfshaft/worklog';
import { Fragment, useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { NumberField } from '@/components/number-field';
import { NumberPad } from '../bay/number-pad';
import { pressKey } from '../bay/press-key';
import { HotHint } from './hot-hint';
import { tyreFact } from './move-tyre';
import { MEASURES, type MeasureKey, NOTHING_TYPED, readMeasures } from './read-measures';
import type { TyreFormProps } from './tyre-dialog';
import { LEGAL_TREAD_TENTHS, tyreName } from './tyre-words';
import styles from './tyres.module.css';
import { WhenField } from './when-field';

/** Tread and pressures of one tyre, with a pad for gloves. */
export function MeasureDialog(props: TyreFormProps & { tyre: TyreUse }) {
  const { work, visit, tyre, record, onClose } = props;
  const [typed, setTyped] = useState(NOTHING_TYPED);
  const [lit, setLit] = useState<MeasureKey>('treadTenths');
  const [asked, setAsked] = useState(false);
  const [at, setAt] = useState<FactPlace>({ kind: 'service', serviceId: visit.service.id });
  const { values, problems } = readMeasures(typed);
  const next = MEASURES[MEASURES.findIndex(({ key }) => key === lit) + 1];
  const isEmpty = Object.values(values).every((value) => value === null);

  function finish() {
    setAsked(true);
    if (isEmpty || Object.keys(problems).length > 0) return;
    record([tyreFact(tyre, values)], at);
    onClose();
  }

  function errorOf(key: MeasureKey): string | undefined {
    if (!asked) return undefined;
    if (isEmpty && key === 'treadTenths' && !problems[key]) return 'Type at least one value.';
    return problems[key];
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title={`${tyreName(tyre)}, ${tyrePlaceInWords(tyre.place)}`}
      closeWords="Not now"
      actions={
        <Button look="main" onClick={finish}>
          Write it down
        </Button>
      }
    >
      <div className={styles.measures}>
        {MEASURES.map(({ key, label, unit }) => (
          <Fragment key={key}>
            <NumberField
              label={label}
              unit={unit}
              error={errorOf(key)}
              // The phone's own keyboard would cover the pad; a real keyboard still types.
              inputMode="none"
              data-lit={key === lit || undefined}
              value={typed[key]}
              onFocus={() => setLit(key)}
              onChange={(event) => setTyped({ ...typed, [key]: event.target.value })}
            />
            {key === lit ? (
              <NumberPad
                label={label}
                withPoint
                onKey={(pressed) => setTyped({ ...typed, [key]: pressKey(typed[key], pressed) })}
                onNext={next ? () => setLit(next.key) : null}
              />
            ) : null}
          </Fragment>
        ))}
      </div>
      {values.treadTenths !== null && values.treadTenths < LEGAL_TREAD_TENTHS ? (
        <p role="status">
          <strong>Less than 1.6 mm</strong>, the least on public roads in the EU and the UK. The law where you
          drive and the event’s regulations decide.
        </p>
      ) : null}
      <HotHint coldMillibar={values.coldMillibar ?? tyre.cold?.value ?? null} />
      <WhenField {...{ work, visit, at }} onChange={setAt} />
    </Dialog>
  );
}
