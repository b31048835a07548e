'use client';

import type { CarPlace } from '@halfshaft/lifing';
import { classNames } from '@/lib/class-names';
import { CarDrawing } from './car-drawing';
import { CAR_PLACE_NAMES, DRAWN_PLACES, WIDE_PLACES } from './car-places';
import styles from './car-plan.module.css';

export interface CarPlanProps {
  /** Names the whole: "Where is the snag?" */
  label: string;
  chosen: CarPlace | null;
  onChoose: (place: CarPlace) => void;
  /** How many there are at each place; places left away show nothing. */
  counts?: Partial<Record<CarPlace, number>>;
  /** What is counted. */
  counted?: { one: string; many: string };
}

const JOBS = { one: 'job', many: 'jobs' };

/** The car in plan: each place is a button large enough for a glove. */
export function CarPlan({ label, chosen, onChoose, counts = {}, counted = JOBS }: CarPlanProps) {
  function button(place: CarPlace) {
    return (
      <PlaceButton
        key={place}
        place={place}
        chosen={chosen === place}
        words={countInWords(counts[place], counted)}
        onChoose={onChoose}
      />
    );
  }
  return (
    <fieldset className={styles.plan}>
      <legend className={styles.legend}>{label}</legend>
      <div className={styles.ground}>
        <span className={styles.front}>front</span>
        <div className={styles.drawing}>
          <CarDrawing chosen={chosen} />
        </div>
        <div className={styles.places}>{DRAWN_PLACES.map(button)}</div>
      </div>
      <div className={styles.wide}>{WIDE_PLACES.map(button)}</div>
    </fieldset>
  );
}

function countInWords(count: number | undefined, counted: { one: string; many: string }): string | null {
  if (count === undefined || count === 0) return null;
  return `${count} ${count === 1 ? counted.one : counted.many}`;
}

interface PlaceButtonProps {
  place: CarPlace;
  chosen: boolean;
  words: string | null;
  onChoose: (place: CarPlace) => void;
}

function PlaceButton({ place, chosen, words, onChoose }: PlaceButtonProps) {
  return (
    <button
      type="button"
      className={classNames(styles.place, styles[place])}
      aria-pressed={chosen}
      onClick={() => onChoose(place)}
    >
      <span className={styles.name}>{CAR_PLACE_NAMES[place]}</span>
      {words === null ? null : <span className={styles.count}>{words}</span>}
    </button>
  );
}
