import { type FactPlace, isOnCar, type TyrePlace, type TyreUse, tyrePlaceInWords } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { moveTyre } from './move-tyre';
import type { TyreFormProps } from './tyre-dialog';
import { distanceInWords, measureInWords, placeTitle, treadInWords, tyreName } from './tyre-words';
import { WhenField } from './when-field';

/** One place of the car: the tyre that is there, and what can come there instead with one tap. */
export function PlaceDialog(props: TyreFormProps & { place: TyrePlace }) {
  const { work, visit, tyres, place, record, onOpen, onClose } = props;
  const [at, setAt] = useState<FactPlace>({ kind: 'service', serviceId: visit.service.id });
  const present = tyres.find((tyre) => tyre.place === place);
  const others = tyres.filter((tyre) => tyre.place !== place && tyre.place !== 'scrapped');
  const move = (tyre: TyreUse, to: TyrePlace) => {
    record(moveTyre(tyres, tyre.tyreId, to), at);
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title={placeTitle(place)} closeWords="Leave as it is">
      <Stack>
        {present ? <Present {...{ present, onOpen }} /> : <p>No tyre is written down here.</p>}
        <WhenField {...{ work, visit, at }} onChange={setAt} />
        {others.length > 0 ? <h3>{present ? 'Put here instead' : 'Put here'}</h3> : null}
        {others.map((tyre) => (
          <Button key={tyre.tyreId} wide onClick={() => move(tyre, place)}>
            {tyreName(tyre)} · {tyrePlaceInWords(tyre.place)}
          </Button>
        ))}
        <Button
          wide
          look={tyres.length === 0 ? 'main' : 'plain'}
          onClick={() => onOpen({ kind: 'add', place })}
        >
          A tyre not written down yet
        </Button>
        {present ? <TakeOff present={present} onMove={(to) => move(present, to)} /> : null}
      </Stack>
    </Dialog>
  );
}

function Present({ present, onOpen }: { present: TyreUse } & Pick<TyreFormProps, 'onOpen'>) {
  return (
    <Stack gap="small">
      <p>
        <strong>{tyreName(present)}</strong>: {distanceInWords(present)}, tread{' '}
        {measureInWords(present.tread, treadInWords)}
      </p>
      <Button wide look="main" onClick={() => onOpen({ kind: 'measure', tyreId: present.tyreId })}>
        Measure this tyre
      </Button>
    </Stack>
  );
}

const AWAY: readonly TyrePlace[] = ['service', 'scrapped'];

function TakeOff({ present, onMove }: { present: TyreUse; onMove: (to: TyrePlace) => void }) {
  return (
    <>
      <h3>{isOnCar(present.place) ? 'Take it off' : 'Take it out'}</h3>
      {AWAY.map((to) => (
        <Button key={to} wide onClick={() => onMove(to)}>
          {to === 'service' ? 'Leave it in the service area' : 'Give it up'}
        </Button>
      ))}
    </>
  );
}
