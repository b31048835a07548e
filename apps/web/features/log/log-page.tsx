'use client';

import { WorkPage } from '../work/work-page';
import { LogScreen } from './log-screen';

export function LogPage() {
  return <WorkPage>{(work) => <LogScreen work={work} />}</WorkPage>;
}
