import type { BringInReport } from '@halfshaft/contract';
import { SentenceList } from '../bulletins/sentence-list';
import { reportInWords } from './report-words';

/** What came in, what was left as it is, and what was refused and why. */
export function ReportLines({ report }: { report: BringInReport }) {
  const refused = report.refused.map(({ deed, why }) => `${deed}: ${why}`);
  return (
    <>
      <p>{reportInWords(report)}</p>
      {refused.length > 0 ? <SentenceList sentences={[...new Set(refused)]} /> : null}
      {report.notes.length > 0 ? <SentenceList sentences={[...new Set(report.notes)]} /> : null}
    </>
  );
}
