import type { BringInReport } from '@halfshaft/contract';
import { SentenceList } from '../bulletins/sentence-list';
import { reportInWords } from './report-words';

/** What came in, what was left as it is, and what was refused and why. */
export function ReportLines({ report }: { report: BringInReport }) {
  const refused = report.refused.map(({ deed, why }) => `${deed}: ${why}`);
  return (
    <>
      <p>{reportInWords(report)}</p>
      <Listed title="Refused, and why:" sentences={refused} />
      <Listed title="Beside the work:" sentences={report.notes} />
    </>
  );
}

function Listed({ title, sentences }: { title: string; sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <>
      <p>
        <strong>{title}</strong>
      </p>
      <SentenceList sentences={[...new Set(sentences)]} />
    </>
  );
}
