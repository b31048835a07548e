import type { TyrePlace, TyreUse } from '@halfshaft/worklog';
import { classNames } from '@/lib/class-names';
import { CarDrawing } from '../car-plan/car-drawing';
import { barInWords, distanceInWords, placeTitle, treadInWords } from './tyre-words';
import styles from './tyres.module.css';

const CORNERS: readonly TyrePlace[] = ['FL', 'FR', 'RL', 'RR'];
const SPARES: readonly TyrePlace[] = ['spare1', 'spare2'];

interface TyrePlanProps {
  tyres: readonly TyreUse[];
  onPlace: (place: TyrePlace) => void;
}

/** The car in plan with the tyre at each corner, and the spares below; a tap on a place leads to what can be done there. */
export function TyrePlan({ tyres, onPlace }: TyrePlanProps) {
  const button = (place: TyrePlace) => (
    <PlaceButton
      key={place}
      place={place}
      tyre={tyres.find((tyre) => tyre.place === place)}
      onPlace={onPlace}
    />
  );
  return (
    <div className={styles.plan}>
      <div className={styles.ground}>
        <div className={styles.drawing}>
          <CarDrawing chosen={null} />
        </div>
        {CORNERS.map(button)}
      </div>
      <div className={styles.spares}>{SPARES.map(button)}</div>
    </div>
  );
}

interface PlaceButtonProps {
  place: TyrePlace;
  tyre: TyreUse | undefined;
  onPlace: (place: TyrePlace) => void;
}

function PlaceButton({ place, tyre, onPlace }: PlaceButtonProps) {
  return (
    <button
      type="button"
      className={classNames(styles.place, styles[place], !tyre && styles.vacant)}
      onClick={() => onPlace(place)}
    >
      <span className={styles.placeName}>{placeTitle(place)}</span>
      {tyre ? linesOf(tyre).map((line) => <span key={line}>{line}</span>) : <span>no tyre</span>}
    </button>
  );
}

function linesOf(tyre: TyreUse): string[] {
  return [
    tyre.mark,
    tyre.compound,
    distanceInWords(tyre),
    tyre.tread ? `tread ${treadInWords(tyre.tread.value)}` : '',
    tyre.cold ? `${barInWords(tyre.cold.value)} cold` : '',
    tyre.hot ? `${barInWords(tyre.hot.value)} hot` : '',
  ].filter((line) => line !== '');
}
