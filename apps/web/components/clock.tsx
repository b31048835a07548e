import { classNames } from '@/lib/class-names';
import { formatDuration } from '@/lib/format-duration';
import styles from './clock.module.css';

interface ClockWords {
  /** What the clock tells: "car must leave in", "in-time". */
  label: string;
  large?: boolean;
}

export interface CountdownProps extends ClockWords {
  /** The moment counted down to, in seconds since the epoch. */
  until: number;
  /** From `useNow()`; null while the page has not started yet. */
  now: number | null;
  /** Stands behind the figures once the moment has passed. */
  overWords?: string;
}

/** Minutes and seconds left, or over: the words tell which, not a colour. */
export function Countdown({ label, until, now, overWords = 'over', large = false }: CountdownProps) {
  const left = now === null ? null : until - now;
  const over = left !== null && left < 0;
  return (
    <ClockFace label={label} large={large} after={over ? overWords : 'min'} over={over}>
      {left === null ? '–:––' : formatDuration(left)}
    </ClockFace>
  );
}

export interface TimeOfDayProps extends ClockWords {
  /** As it is to be read, `12:41`, in the zone of the event and not of the phone; null while not known. */
  time: string | null;
}

/** A time of day, 24 hours. */
export function TimeOfDay({ label, time, large = false }: TimeOfDayProps) {
  return (
    <ClockFace label={label} large={large}>
      {time ?? '––:––'}
    </ClockFace>
  );
}

interface ClockFaceProps extends ClockWords {
  children: string;
  after?: string;
  over?: boolean;
}

function ClockFace({ label, large = false, children, after, over = false }: ClockFaceProps) {
  return (
    <p className={classNames(styles.clock, large && styles.large)}>
      <span className={styles.label}>{label} </span>
      <time className={classNames(styles.face, over && styles.over)}>{children}</time>
      {after ? <span className={styles.after}> {after}</span> : null}
    </p>
  );
}
