import { type FactPlace, TYRE_PLACES, type TyrePlace } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { TextField } from '@/components/text-field';
import { newId } from '../work/new-id';
import { tyreFact } from './move-tyre';
import type { TyreFormProps } from './tyre-dialog';
import { placeTitle } from './tyre-words';
import { WhenField } from './when-field';

const PLACES = TYRE_PLACES.filter((place) => place !== 'scrapped').map((place) => ({
  value: place,
  label: place === 'service' ? 'In the service area' : placeTitle(place),
}));

/** A tyre comes up for the first time. Kept open for the next one, since four are fitted at once. */
export function AddTyreDialog(props: TyreFormProps & { startPlace: TyrePlace }) {
  const { work, visit, tyres, record, onClose } = props;
  const [mark, setMark] = useState('');
  const [compound, setCompound] = useState(tyres.at(-1)?.compound ?? '');
  const [place, setPlace] = useState(props.startPlace);
  const [at, setAt] = useState<FactPlace>(
    tyres.length === 0
      ? { kind: 'road', afterStageId: null }
      : { kind: 'service', serviceId: visit.service.id },
  );
  const [error, setError] = useState('');

  function add(andAnother: boolean) {
    const problem = problemWith(mark.trim(), tyres);
    setError(problem);
    if (problem !== '') return;
    const tyre = { tyreId: newId(), mark: mark.trim(), compound: compound.trim(), place };
    const before = tyres.find((each) => each.place === place && place !== 'service');
    record([tyreFact(tyre), ...(before ? [tyreFact(before, { place: 'service' })] : [])], at);
    if (!andAnother) return onClose();
    setMark('');
    setPlace(nextFree(place, tyres));
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title="Add a tyre"
      closeWords="Not now"
      actions={
        <>
          <Button onClick={() => add(true)}>Add, and another</Button>
          <Button look="main" onClick={() => add(false)}>
            Add it
          </Button>
        </>
      }
    >
      <TextField
        label="Mark"
        hint="What is written on it, such as L1 or the number of its label."
        maxLength={40}
        autoComplete="off"
        error={error || undefined}
        value={mark}
        onChange={(event) => setMark(event.target.value)}
      />
      <TextField
        label="Compound"
        optional
        maxLength={40}
        value={compound}
        onChange={(event) => setCompound(event.target.value)}
      />
      <SelectField
        label="Where is it?"
        options={PLACES}
        value={place}
        onChange={(event) => setPlace(event.target.value as TyrePlace)}
      />
      <WhenField {...{ work, visit, at }} onChange={setAt} />
    </Dialog>
  );
}

function problemWith(mark: string, tyres: TyreFormProps['tyres']): string {
  if (mark === '') return 'Type what is written on the tyre, so that it can be told from the others.';
  const same = tyres.some((tyre) => tyre.mark.toLowerCase() === mark.toLowerCase());
  return same ? `A tyre ${mark} is on the list already. Give this one another mark.` : '';
}

/** The next place round the car that nothing stands at; the service area when all are taken. */
function nextFree(place: TyrePlace, tyres: TyreFormProps['tyres']): TyrePlace {
  const taken = new Set([place, ...tyres.map((tyre) => tyre.place)]);
  if (place === 'service') return place;
  return TYRE_PLACES.find((each) => !taken.has(each)) ?? 'service';
}
