import { Mark, type MarkFill, type MarkShape } from '@/components/mark';
import { VisuallyHidden } from '@/components/visually-hidden';
import styles from './state-mark.module.css';

/** A verdict of a card, or a state of a task. */
export type MarkedState =
  | 'doNow'
  | 'ifTime'
  | 'leave'
  | 'open'
  | 'claimed'
  | 'underWay'
  | 'done'
  | 'carriedOver'
  | 'notNeeded';

interface StateLook {
  /** Round: how much the car needs it. Box: what has become of it. */
  shape: MarkShape;
  fill: MarkFill;
  words: string;
}

const LOOKS: Record<MarkedState, StateLook> = {
  doNow: { shape: 'round', fill: 'filled', words: 'do now' },
  ifTime: { shape: 'round', fill: 'half', words: 'if time' },
  leave: { shape: 'round', fill: 'outlined', words: 'leave' },
  open: { shape: 'box', fill: 'outlined', words: 'open' },
  claimed: { shape: 'box', fill: 'dotted', words: 'taken' },
  underWay: { shape: 'box', fill: 'half', words: 'under way' },
  done: { shape: 'box', fill: 'ticked', words: 'done' },
  carriedOver: { shape: 'box', fill: 'hatched', words: 'carried over' },
  notNeeded: { shape: 'box', fill: 'struck', words: 'not needed' },
};

export interface StateMarkProps {
  state: MarkedState;
  /** Instead of the usual words: "do now: won't reach Service C", "taken by Mika". */
  words?: string;
  /** Mark only; the words stay for a screen reader. For tight rows whose heading already says it. */
  wordsHidden?: boolean;
  large?: boolean;
}

/** A state as a drawn mark and words. */
export function StateMark({ state, words, wordsHidden = false, large = false }: StateMarkProps) {
  const look = LOOKS[state];
  const said = words ?? look.words;
  return (
    <span className={styles.state}>
      <Mark shape={look.shape} fill={look.fill} large={large} />
      {wordsHidden ? <VisuallyHidden>{said}</VisuallyHidden> : <span className={styles.words}>{said}</span>}
    </span>
  );
}
