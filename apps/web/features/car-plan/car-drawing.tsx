import type { CarPlace } from '@halfshaft/lifing';
import { classNames } from '@/lib/class-names';
import styles from './car-drawing.module.css';

const WHEELS: readonly { place: CarPlace; x: number; y: number }[] = [
  { place: 'frontLeft', x: 61, y: 72 },
  { place: 'frontRight', x: 213, y: 72 },
  { place: 'rearLeft', x: 61, y: 318 },
  { place: 'rearRight', x: 213, y: 318 },
];

const SHELL =
  'M150 20c38 0 58 10 62 42l5 62v200c0 50-2 78-18 88H101c-16-10-18-38-18-88V124l5-62c4-32 24-42 62-42z';
const BONNET = 'M97 66c4-24 20-32 53-32s49 8 53 32l4 54c-30-8-84-8-114 0z';
const ROOF = 'M109 178c20-6 62-6 82 0v112c-20 6-62 6-82 0z';
const DOORS = 'M88 134l16 46v110l-15 40zM212 134l-16 46v110l15 40z';
const BOOT = 'M98 342c26 8 78 8 104 0v42c0 12-3 16-8 18h-88c-5-2-8-6-8-18z';
const GLASS =
  'M96 131c28-10 80-10 108 0l-12 40c-22-6-62-6-84 0zM108 297c22 6 62 6 84 0l8 36c-26 8-74 8-100 0z';
/** Axles, propeller shaft and the joints between. */
const DRIVETRAIN = 'M88 103h125M88 349h125M150 110v232';

/** A car of no make, seen from above with its nose up. The chosen place is drawn in carbon ink. */
export function CarDrawing({ chosen }: { chosen: CarPlace | null }) {
  function part(...places: CarPlace[]): string {
    const isChosen = chosen !== null && (places.includes(chosen) || chosen === 'wholeCar');
    return classNames(styles.part, isChosen && styles.chosen);
  }
  return (
    <svg className={styles.car} viewBox="-20 0 340 440" aria-hidden="true">
      {WHEELS.map(({ place, x, y }) => (
        <rect
          key={place}
          className={classNames(styles.wheel, part(place, 'allCorners'))}
          x={x}
          y={y}
          width="26"
          height="62"
          rx="6"
        />
      ))}
      <path className={part()} d={SHELL} />
      <path className={part('body')} d={DOORS} />
      <path className={part('engineBay')} d={BONNET} />
      <path className={part('cockpit')} d={ROOF} />
      <path className={part('boot')} d={BOOT} />
      <path className={styles.glass} d={GLASS} />
      <rect className={styles.line} x="138" y="188" width="24" height="13" rx="2" />
      <path className={styles.line} d="M84 150l-12-6v-8l14-2M216 150l12-6v-8l-14-2" />
      <path className={styles.lamp} d="M104 44l14-8M196 44l-14-8" />
      <path
        className={classNames(styles.drivetrain, chosen === 'underCar' && styles.drivetrainChosen)}
        d={DRIVETRAIN}
      />
      <path className={styles.wing} d="M80 414h140" />
    </svg>
  );
}
