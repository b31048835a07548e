import {
  type CarFact,
  GATE_CHANGES,
  GATE_CHECKS,
  type Gate,
  type GateChange,
  type GateCheck,
  gateChangeInWords,
  gateCheckInWords,
  gateOf,
  type PersonId,
} from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { capitalise } from '@/lib/capitalise';
import type { Visit } from '../service/visit';
import { nameOf } from '../work/names';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';
import { clockOfFact } from './clock-of-fact';

interface CarGateProps {
  work: LoadedWork;
  visit: Visit;
  /** Whose word it is. */
  by: PersonId;
}

/**
 * What one person looks at before anybody works on the car: once a service instead of on every card, and again when
 * something has changed. It reminds; work that is logged without it counts all the same.
 */
export function CarGate({ work, visit, by }: CarGateProps) {
  const { entryId } = visit.entry;
  const serviceId = visit.service.id;
  const gate = gateOf(work.state.facts.values(), entryId, serviceId);
  const say = (fact: CarFact) =>
    work.act('recordFact', { factId: newId(), entryId, at: { kind: 'service', serviceId }, fact }, by);
  return gate.kind === 'checked' ? (
    <Checked work={work} gate={gate} onChange={(because) => say({ kind: 'gateOpened', because })} />
  ) : (
    <Question
      title={titleOf(gate)}
      sayer={nameOf(work.replica, by)}
      onSay={(checks) => say({ kind: 'gateChecked', checks })}
    />
  );
}

function titleOf(gate: Exclude<Gate, { kind: 'checked' }>): string {
  if (gate.kind === 'notChecked') return 'Before anyone touches the car';
  return `Look again: ${gateChangeInWords(gate.because)}`;
}

interface QuestionProps {
  title: string;
  sayer: string;
  onSay: (checks: GateCheck[]) => void;
}

function Question({ title, sayer, onSay }: QuestionProps) {
  const [checks, setChecks] = useState<GateCheck[]>([]);
  const [asked, setAsked] = useState(false);
  const isEmpty = checks.length === 0;
  const toggle = (check: GateCheck) =>
    setChecks(checks.includes(check) ? checks.filter((each) => each !== check) : [...checks, check]);
  return (
    <Notice kind="warning" title={title}>
      <ChoiceGroup
        label="Tick what you have looked at and is so"
        pick="many"
        choices={GATE_CHECKS.map((value) => ({ value, label: capitalise(gateCheckInWords(value)) }))}
        chosen={checks}
        error={asked && isEmpty ? 'Tick what you have looked at.' : undefined}
        onChange={(event) => toggle(event.target.value as GateCheck)}
      />
      <Button look="main" onClick={() => (isEmpty ? setAsked(true) : onSay(checks))}>
        {sayer} looked at this
      </Button>
      <p>The event's regulations and qualified people decide.</p>
    </Notice>
  );
}

interface CheckedProps {
  work: LoadedWork;
  gate: Extract<Gate, { kind: 'checked' }>;
  onChange: (change: GateChange) => void;
}

function Checked({ work, gate, onChange }: CheckedProps) {
  const { replica, entries } = work;
  const missing = GATE_CHECKS.filter((check) => !gate.checks.includes(check)).map(gateCheckInWords);
  const clock = clockOfFact(gate.factId, entries, replica);
  return (
    <Stack gap="small">
      <p>
        {nameOf(replica, gate.by)} looked{clock === null ? '' : ` at ${clock}`}:{' '}
        {gate.checks.map(gateCheckInWords).join('; ')}.
      </p>
      {missing.length > 0 ? (
        <Notice kind="warning" title="Not so">
          <p>{capitalise(missing.join('; '))}.</p>
        </Notice>
      ) : null}
      <Disclosure summary="Something has changed">
        <Stack across gap="small">
          {GATE_CHANGES.map((change) => (
            <Button key={change} onClick={() => onChange(change)}>
              {capitalise(gateChangeInWords(change))}
            </Button>
          ))}
        </Stack>
      </Disclosure>
    </Stack>
  );
}
