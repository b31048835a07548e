'use client';

import { type ThemeChoice as Choice, useTheme } from '@/lib/theme';
import styles from './theme-choice.module.css';

const CHOICES: readonly { value: Choice; label: string }[] = [
  { value: 'phone', label: 'Follow the phone' },
  { value: 'paper', label: 'Paper' },
  { value: 'graphite', label: 'Graphite' },
  { value: 'sun', label: 'Sun' },
  { value: 'night', label: 'Night' },
];

/** Light paper or dark graphite, as the phone has it; the most contrast for low sun, dim and warm for the night. Kept on this device. */
export function ThemeChoice() {
  const { choice, choose } = useTheme();
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>Light on this screen</legend>
      <div className={styles.choices}>
        {CHOICES.map(({ value, label }) => (
          <label key={value} className={styles.choice}>
            <input
              className={styles.box}
              type="radio"
              name="theme"
              value={value}
              checked={choice === value}
              onChange={() => choose(value)}
            />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
