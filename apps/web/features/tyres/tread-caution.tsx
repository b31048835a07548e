import { isOnCar, type TyreUse } from '@halfshaft/worklog';
import { Notice } from '@/components/notice';
import { LEGAL_TREAD_TENTHS, placeTitle, treadInWords } from './tyre-words';

/** Says which tyres on the car are worn below what the road asks for, and who decides. */
export function TreadCaution({ tyres }: { tyres: readonly TyreUse[] }) {
  const worn = tyres.filter(
    ({ place, tread }) => isOnCar(place) && tread !== null && tread.value < LEGAL_TREAD_TENTHS,
  );
  if (worn.length === 0) return null;
  return (
    <Notice kind="warning" spoken>
      {worn.map(({ tyreId, place, mark, tread }) => (
        <p key={tyreId}>
          {placeTitle(place)}, {mark}: tread {treadInWords(tread?.value ?? 0)}, less than 1.6 mm.
        </p>
      ))}
      <p>
        1.6 mm is the least tread on public roads in the EU and the UK, and road sections are public roads.
        The law where you drive and the event’s regulations decide.
      </p>
    </Notice>
  );
}
