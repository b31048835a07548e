'use client';

import type { LookOutcome, Problem, TakeOutcome } from '@halfshaft/contract';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { EmptyState } from '@/components/empty-state';
import { FileField } from '@/components/file-field';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { useSession } from '@/lib/session';
import { BRING_IN_ADDRESS, HOME_ADDRESS, signInAddress } from '../events/addresses';
import { LoadTrouble } from '../events/trouble';
import { PageFrame } from '../frame/page-frame';
import { BroughtIn } from './brought-in';
import { lookAtFile, type PicturesSent, sendPictures, takeFile } from './event-file';
import { LookedAt } from './looked-at';

export function BringInPage() {
  const session = useSession();
  return (
    <PageFrame homeHref={HOME_ADDRESS} links={[{ href: HOME_ADDRESS, label: 'Home' }]}>
      <Stack gap="large">
        <PageHeader title="Bring an event in" />
        <Opened session={session} />
      </Stack>
    </PageFrame>
  );
}

function Opened({ session }: { session: ReturnType<typeof useSession> }) {
  if (session.data) return <BringIn />;
  if (session.isPending) return <LoadingState words="Looking who you are …" />;
  if (session.isError) return <LoadTrouble error={session.error} onTryAgain={() => session.refetch()} />;
  return (
    <EmptyState
      title="Sign in on this server first."
      action={
        <Stack across gap="small">
          <LinkButton href={signInAddress(BRING_IN_ADDRESS)} look="main">
            Sign in
          </LinkButton>
          <LinkButton href="/sign-up/">Make an account</LinkButton>
        </Stack>
      }
    >
      Accounts do not travel in the file: on a laptop that is new to you, make one there.
    </EmptyState>
  );
}

type Step =
  | { kind: 'choose' }
  | { kind: 'looked'; file: File; look: LookOutcome }
  | { kind: 'done'; outcome: TakeOutcome; sent: PicturesSent };

function BringIn() {
  const queries = useQueryClient();
  const [step, setStep] = useState<Step>({ kind: 'choose' });
  const [problem, setProblem] = useState<Problem | null>(null);
  /** What is being waited for. */
  const [busy, setBusy] = useState<string | null>(null);

  async function look(file: File): Promise<void> {
    setBusy('Reading the file …');
    setStep({ kind: 'choose' });
    const answer = await lookAtFile(file);
    setBusy(null);
    setProblem(answer.ok ? null : answer.problem);
    if (answer.ok) setStep({ kind: 'looked', file, look: answer.outcome });
  }

  async function take(file: File, person: string | undefined): Promise<void> {
    setBusy('Bringing it in …');
    const answer = await takeFile(file, person);
    setProblem(answer.ok ? null : answer.problem);
    if (answer.ok) {
      const { outcome } = answer;
      const missing = outcome.pictures.filter(({ isMissing }) => isMissing).length;
      const sent = await sendPictures(file, outcome, (done) => setBusy(`Photo ${done} of ${missing} …`));
      await queries.invalidateQueries();
      setStep({ kind: 'done', outcome, sent });
    }
    setBusy(null);
  }

  if (step.kind === 'done') return <BroughtIn outcome={step.outcome} sent={step.sent} />;
  return (
    <>
      <Sheet title="The file">
        <p>
          On the event’s page of the other server a manager saves the event as a file. Choose it here: you are
          told what is in it before anything changes.
        </p>
        <FileField
          label="File of an event"
          hint="Its name ends in .halfshaft"
          onPick={(file) => {
            if (busy === null) void look(file);
          }}
        />
        {busy !== null && step.kind === 'choose' ? <LoadingState words={busy} /> : null}
      </Sheet>
      <Refused problem={problem} />
      {step.kind === 'looked' ? (
        <LookedAt
          key={step.file.name + step.look.madeAt}
          look={step.look}
          fileName={step.file.name}
          busy={busy}
          onTake={(person) => void take(step.file, person)}
        />
      ) : null}
    </>
  );
}

function Refused({ problem }: { problem: Problem | null }) {
  if (problem === null) return null;
  return (
    <Notice kind="problem" title="Not brought in" spoken>
      <p>{problem.message}</p>
      {problem.code === 'signInNeeded' ? (
        <LinkButton href={signInAddress(BRING_IN_ADDRESS)}>Sign in</LinkButton>
      ) : null}
    </Notice>
  );
}
