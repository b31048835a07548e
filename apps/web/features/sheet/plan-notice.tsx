import type { VisitProposal } from '@halfshaft/bayplan';
import { Notice } from '@/components/notice';

/** Why nobody's place in the work could be planned, and what the sheet is then. */
export function PlanNotice({ proposal }: { proposal: VisitProposal }) {
  if (proposal.kind === 'plan') return null;
  return (
    <Notice kind="warning" title="No plan works out" spoken>
      <ul>
        {proposal.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p>
        So the sheet is shared out by minutes only: it does not look at who waits for whom, at room or at
        tools.
      </p>
    </Notice>
  );
}
