import type { Finding } from '@halfshaft/worklog';
import { Fragment, useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { NumberField } from '@/components/number-field';
import type { LastRead } from '../readings/last-read';
import { bandInWords, limitInWords } from '../work/reading-in-words';
import styles from './bay.module.css';
import { NumberPad } from './number-pad';
import { pressKey } from './press-key';
import { type ReadingSlot, readTyped } from './read-typed';

export interface ReadingsPadProps {
  slots: readonly ReadingSlot[];
  /** By slot, as typed. */
  typed: Readonly<Record<string, string>>;
  problems: Readonly<Record<string, string>>;
  /** What was read there before, by slot. */
  lastRead: ReadonlyMap<string, LastRead>;
  findings: readonly Finding[];
  onType: (key: string, text: string) => void;
  /** A value out of order, noted as a finding. */
  onOffer: (finding: Finding) => void;
}

/** One box for each reading and place; a large pad stands under the box that is lit and types into it. */
export function ReadingsPad({
  slots,
  typed,
  problems,
  lastRead,
  findings,
  onType,
  onOffer,
}: ReadingsPadProps) {
  const numbers = slots.filter(({ spec }) => spec.kind !== 'passFail');
  const [litKey, setLitKey] = useState(numbers[0]?.key ?? null);
  const next = numbers[numbers.findIndex((slot) => slot.key === litKey) + 1];
  return (
    <div className={styles.slots}>
      {slots.map((slot) => (
        <Fragment key={slot.key}>
          <div>
            {slot.spec.kind === 'passFail' ? (
              <PassFail slot={slot} text={typed[slot.key] ?? ''} lastRead={lastRead} onType={onType} />
            ) : (
              <NumberField
                label={slotName(slot)}
                unit={slot.spec.unit}
                hint={hintOf(slot, lastRead)}
                error={problems[slot.key]}
                // The phone's own keyboard would cover the pad; a real keyboard still types.
                inputMode="none"
                data-lit={slot.key === litKey || undefined}
                value={typed[slot.key] ?? ''}
                onFocus={() => setLitKey(slot.key)}
                onChange={(event) => onType(slot.key, event.target.value)}
              />
            )}
            <OutOfOrder slot={slot} text={typed[slot.key] ?? ''} findings={findings} onOffer={onOffer} />
          </div>
          {slot.key === litKey ? (
            <NumberPad
              label={slotName(slot)}
              withPoint={slot.spec.decimals > 0}
              onKey={(key) => onType(slot.key, pressKey(typed[slot.key] ?? '', key))}
              onNext={next ? () => setLitKey(next.key) : null}
            />
          ) : null}
        </Fragment>
      ))}
    </div>
  );
}

/** What it was last, what is allowed, and whether it is wanted. */
function hintOf({ key, spec }: ReadingSlot, lastRead: ReadingsPadProps['lastRead']): string {
  return [lastRead.get(key)?.words, bandInWords(spec), spec.required ? '' : 'may stay empty']
    .filter(Boolean)
    .join(' · ');
}

function slotName({ spec, position }: ReadingSlot): string {
  return position === null ? spec.name : `${spec.name} ${position}`;
}

interface SlotProps {
  slot: ReadingSlot;
  text: string;
}

function PassFail({
  slot,
  text,
  lastRead,
  onType,
}: SlotProps & Pick<ReadingsPadProps, 'lastRead' | 'onType'>) {
  return (
    <ChoiceGroup
      label={slotName(slot)}
      hint={lastRead.get(slot.key)?.words}
      across
      choices={[
        { value: '1', label: 'passed' },
        { value: '0', label: 'failed' },
      ]}
      chosen={[text]}
      onChange={(event) => onType(slot.key, event.target.value)}
    />
  );
}

/** Says in words what is out of order, and offers to note it. */
function OutOfOrder({
  slot,
  text,
  findings,
  onOffer,
}: SlotProps & Pick<ReadingsPadProps, 'findings' | 'onOffer'>) {
  const read = readTyped(text, slot.spec);
  const wrong = read.ok ? limitInWords(slot.spec, read.value) : null;
  if (wrong === null) return null;
  const words =
    `${slotName(slot)} ${slot.spec.kind === 'passFail' ? '' : `${text} ${slot.spec.unit} `}${wrong}`.replace(
      / +/g,
      ' ',
    );
  const noted = findings.some((finding) => finding.words === words);
  return (
    <div className={styles.wrong} role="status">
      <strong>Out of order: {wrong}.</strong>
      {noted ? (
        <span> Noted as a finding.</span>
      ) : (
        <Button onClick={() => onOffer({ lookId: null, position: slot.position, grade: 'needsWork', words })}>
          Note: needs work
        </Button>
      )}
    </div>
  );
}
