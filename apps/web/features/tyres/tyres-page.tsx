'use client';

import { tyresAddress } from '../events/addresses';
import { VisitPage } from '../service/visit-page';
import { TyresScreen } from './tyres-screen';

export function TyresPage() {
  return (
    <VisitPage addressOf={tyresAddress}>
      {(work, visit) => (
        <TyresScreen key={`${visit.entry.entryId}${visit.service.id}`} work={work} visit={visit} />
      )}
    </VisitPage>
  );
}
