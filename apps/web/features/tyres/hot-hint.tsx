import { hotMillibarOf } from '@halfshaft/worklog';
import { useState } from 'react';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { readTyped } from '../bay/read-typed';
import { barInWords } from './tyre-words';
import styles from './tyres.module.css';

/** What a cold pressure should become, by the gas law: a hint for who sets pressures in the cold. */
export function HotHint({ coldMillibar }: { coldMillibar: number | null }) {
  const [cold, setCold] = useState('15');
  const [hot, setHot] = useState('60');
  return (
    <Disclosure summary="What to expect once it is hot">
      <div className={styles.measures}>
        <NumberField
          label="Tyre now"
          unit="°C"
          value={cold}
          onChange={(event) => setCold(event.target.value)}
        />
        <NumberField
          label="Tyre hot"
          unit="°C"
          value={hot}
          onChange={(event) => setHot(event.target.value)}
        />
      </div>
      <p role="status">{expectationOf(coldMillibar, cold, hot)}</p>
    </Disclosure>
  );
}

function expectationOf(coldMillibar: number | null, coldText: string, hotText: string): string {
  if (coldMillibar === null) return 'Type the cold pressure first.';
  const [cold, hot] = [readTyped(coldText, { decimals: 0 }), readTyped(hotText, { decimals: 0 })];
  if (!cold.ok || !hot.ok) return 'Type both temperatures as whole degrees.';
  const expected = hotMillibarOf({ coldMillibar, coldCelsius: cold.value, hotCelsius: hot.value });
  if (expected === null) return 'A tyre has no such temperature. Check it.';
  return `${barInWords(coldMillibar)} at ${cold.value} °C becomes about ${barInWords(expected)} at ${hot.value} °C by the gas law. A hint: real tyres differ, so measure.`;
}
