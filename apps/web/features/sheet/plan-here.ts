import { proposeVisit, type VisitProposal, type VisitQuestion } from '@halfshaft/bayplan';

/** The plan made on this device, pausing so that the page stays alive. It is the one that the server would give. */
export async function planHere(question: VisitQuestion, signal: AbortSignal): Promise<VisitProposal> {
  const planning = proposeVisit(question);
  for (;;) {
    const step = planning.next();
    if (step.done) return step.value;
    await new Promise((resume) => setTimeout(resume));
    signal.throwIfAborted();
  }
}
