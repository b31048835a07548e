'use client';

import { readingsAddress } from '../events/addresses';
import { VisitPage } from '../service/visit-page';
import { ReadingsScreen } from './readings-screen';

export function ReadingsPage() {
  return (
    <VisitPage addressOf={readingsAddress}>
      {(work, visit) => <ReadingsScreen work={work} visit={visit} />}
    </VisitPage>
  );
}
