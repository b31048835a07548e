import { askerInWords, type CarSetting, type SettingChange } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { shortPlace } from '../tyres/tyre-words';
import { settingName } from './setting-name';
import styles from './settings.module.css';

interface SettingLineProps {
  setting: CarSetting;
  onBack: () => void;
  onChange: () => void;
}

/** One setting: now, at base, and each step between. */
export function SettingLine({ setting, onBack, onChange }: SettingLineProps) {
  const name = settingName(setting);
  const { base, current, isAtBase, changes } = setting;
  return (
    <li className={styles.line}>
      <h3>{name}</h3>
      <p>
        Now <strong>{current}</strong>
        {isAtBase ? ', as at base' : base === '' ? '; the base was not written down' : `; base ${base}`}
      </p>
      <ol className={styles.changes}>
        {changes.map((change, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the changes have an order and no other name.
          <li key={index}>{changeInWords(change)}</li>
        ))}
      </ol>
      <div className={`${styles.buttons} screen-only`}>
        {base === '' || isAtBase ? null : (
          <Button aria-label={`Back to base: ${base}. ${name}`} onClick={onBack}>
            Back to base: {base}
          </Button>
        )}
        <Button look="quiet" aria-label={`Change again: ${name}`} onClick={onChange}>
          Change again
        </Button>
      </div>
    </li>
  );
}

function changeInWords({ from, to, askedBy, backToBase, at }: SettingChange): string {
  const step = from === '' ? `to ${to}` : `${from} → ${to}`;
  return `${shortPlace(at)}: ${step}${backToBase ? ' (back to base)' : ''}, asked for by ${askerInWords(askedBy)}`;
}
