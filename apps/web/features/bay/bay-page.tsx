'use client';

import { bayAddress } from '../events/addresses';
import { VisitPage } from '../service/visit-page';
import { BayScreen } from './bay-screen';

export function BayPage() {
  return (
    <VisitPage addressOf={bayAddress}>
      {(work, visit) => (
        <BayScreen key={`${visit.entry.entryId}${visit.service.id}`} work={work} visit={visit} />
      )}
    </VisitPage>
  );
}
