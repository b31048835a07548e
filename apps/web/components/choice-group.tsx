import { type ComponentProps, useId } from 'react';
import { classNames } from '@/lib/class-names';
import styles from './choice-group.module.css';
import { FieldError, type FieldWords } from './field';

export interface Choice {
  value: string;
  label: string;
  hint?: string;
  disabled?: boolean;
}

export interface ChoiceGroupProps
  extends FieldWords,
    Pick<ComponentProps<'input'>, 'name' | 'onChange' | 'onBlur' | 'ref'> {
  choices: readonly Choice[];
  /** `one` of them (radio) or any number (`many`, tick boxes). */
  pick?: 'one' | 'many';
  /** Side by side where they fit, for short words. */
  across?: boolean;
  /** Set from outside; leave away when `register('name')` is spread onto the group. */
  chosen?: readonly string[];
}

/** Large touch targets for a short list. Spread `register('name')` onto it: every box takes it over. */
export function ChoiceGroup(props: ChoiceGroupProps) {
  const {
    label,
    hint,
    error,
    optional = false,
    choices,
    pick = 'one',
    across = false,
    chosen,
    ...input
  } = props;
  const id = useId();
  const described = [hint && `${id}hint`, error && `${id}error`].filter(Boolean).join(' ');
  return (
    <fieldset className={styles.group} aria-describedby={described || undefined}>
      <legend className={styles.legend}>
        {label}
        {optional ? <span className={styles.optional}> (may stay empty)</span> : null}
      </legend>
      {hint ? (
        <p className={styles.hint} id={`${id}hint`}>
          {hint}
        </p>
      ) : null}
      <div className={classNames(styles.choices, across && styles.across)}>
        {choices.map((choice) => (
          <ChoiceBox
            key={choice.value}
            choice={choice}
            pick={pick}
            chosen={chosen}
            input={input}
            fallbackName={id}
          />
        ))}
      </div>
      <FieldError id={`${id}error`} error={error} />
    </fieldset>
  );
}

interface ChoiceBoxProps {
  choice: Choice;
  pick: 'one' | 'many';
  chosen: readonly string[] | undefined;
  input: Pick<ComponentProps<'input'>, 'name' | 'onChange' | 'onBlur' | 'ref'>;
  fallbackName: string;
}

function ChoiceBox({ choice, pick, chosen, input, fallbackName }: ChoiceBoxProps) {
  const checked = chosen === undefined ? {} : { checked: chosen.includes(choice.value) };
  return (
    <label className={styles.choice}>
      <input
        className={styles.box}
        type={pick === 'one' ? 'radio' : 'checkbox'}
        value={choice.value}
        disabled={choice.disabled}
        {...input}
        {...checked}
        name={input.name ?? fallbackName}
      />
      <span>
        <span className={styles.words}>{choice.label}</span>
        {choice.hint ? <span className={styles.hint}>{choice.hint}</span> : null}
      </span>
    </label>
  );
}
