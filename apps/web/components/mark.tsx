import { classNames } from '@/lib/class-names';
import styles from './mark.module.css';

export type MarkFill = 'filled' | 'half' | 'outlined' | 'hatched' | 'ticked' | 'dotted' | 'struck';
export type MarkShape = 'round' | 'box';

export interface MarkProps {
  shape: MarkShape;
  fill: MarkFill;
  /** Bigger where it is looked at from a step away. */
  large?: boolean;
}

/** Hatching that stays inside a circle of radius 9 as well as inside the box around it. */
const HATCH = {
  round: 'M4.5 12 12 4.5M5.2 17.6 17.6 5.2M9.6 20.4 20.4 9.6M15.4 19.6l4.2-4.2',
  box: 'M3 9l6-6M3 15 15 3M3 21 21 3M9 21 21 9M15 21l6-6',
};

/** A mark as on a clipboard list: told apart by how it is filled. The words beside it carry the meaning. */
export function Mark({ shape, fill, large = false }: MarkProps) {
  const size = large ? 32 : 24;
  const solid = fill === 'filled' || fill === 'ticked';
  return (
    <svg className={styles.mark} viewBox="0 0 24 24" width={size} height={size} aria-hidden="true">
      {shape === 'round' ? (
        <circle className={classNames(styles.edge, solid && styles.solid)} cx="12" cy="12" r="9" />
      ) : (
        <rect
          className={classNames(styles.edge, solid && styles.solid)}
          x="3"
          y="3"
          width="18"
          height="18"
          rx="1.5"
        />
      )}
      <MarkInside shape={shape} fill={fill} />
    </svg>
  );
}

function MarkInside({ shape, fill }: Pick<MarkProps, 'shape' | 'fill'>) {
  switch (fill) {
    case 'half':
      return (
        <path className={styles.inside} d={shape === 'round' ? 'M3 12a9 9 0 0 0 18 0z' : 'M3 12h18v9H3z'} />
      );
    case 'hatched':
      return <path className={styles.hatch} d={HATCH[shape]} />;
    case 'ticked':
      return <path className={styles.tick} d="m6.8 12.6 3.6 3.6 7-8" />;
    case 'dotted':
      return <circle className={styles.inside} cx="12" cy="12" r="3.6" />;
    case 'struck':
      return <path className={styles.stroke} d="M3.5 12h17" />;
    default:
      return null;
  }
}
