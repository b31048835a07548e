'use client';
import { type ControlRole, type Itinerary, type Point, servicesOf } from '@halfshaft/itinerary';
import type { CarPlace } from '@halfshaft/lifing';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Countdown, TimeOfDay } from '@/components/clock';
import { Dialog } from '@/components/dialog';
import { Disclosure } from '@/components/disclosure';
import { EmptyState } from '@/components/empty-state';
import { ErrorState } from '@/components/error-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { Notice } from '@/components/notice';
import { NumberField } from '@/components/number-field';
import { OfflineBar } from '@/components/offline-bar';
import { PageHeader } from '@/components/page-header';
import { SelectField } from '@/components/select-field';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { StepList } from '@/components/step-list';
import { Table } from '@/components/table';
import { TextArea } from '@/components/text-area';
import { TextField } from '@/components/text-field';
import { CarPlan } from '@/features/car-plan/car-plan';
import { PageFrame } from '@/features/frame/page-frame';
import { RouteStrip } from '@/features/route/route-strip';
import { StateMark } from '@/features/task/state-mark';
import { useKeptForm } from '@/lib/keep-typed';
import { useNow } from '@/lib/use-now';

let clock = Date.UTC(2026, 5, 13, 6, 0) / 1000;
function c(id: string, name: string, roles: ControlRole[], road: number, mins: number, leg = 1): Point {
  clock += mins * 60;
  return {
    kind: 'control',
    id,
    name,
    roles,
    roadMetres: road,
    allowedSeconds: mins * 60,
    leg,
    section: 1,
    firstCarAt: clock,
  };
}
function s(id: string, name: string, m: number, leg = 1): Point {
  clock += 180;
  return {
    kind: 'stage',
    id,
    name,
    stageMetres: m,
    gapSeconds: 180,
    repeatOf: null,
    leg,
    section: 1,
    firstCarAt: clock,
  };
}
const itinerary: Itinerary = {
  timeZone: 'Europe/Vienna',
  roadTimedFrom: 'stageStart',
  startBlocks: [],
  points: [
    c('TC0', 'Quarry yard start', ['start'], 0, 0),
    c('TC1', 'Birch Hill', ['timeControl'], 18200, 30),
    s('SS1', 'Birch Hill', 12400),
    c('TC2', 'Mill Ford', ['timeControl'], 9300, 35),
    s('SS2', 'Mill Ford', 8700),
    c('TC2A', 'Service in', ['serviceIn'], 22000, 45),
    c('TC2B', 'Service out', ['serviceOut'], 0, 20),
    c('TC3', 'Long Ridge', ['timeControl'], 15000, 30),
    s('SS3', 'Long Ridge', 21300),
    c('TC4', 'Town loop', ['timeControl'], 4000, 30),
    s('SS4', 'Town loop', 2100),
    c('TC5', 'Birch Hill', ['timeControl'], 6000, 20),
    s('SS5', 'Birch Hill 2', 12400),
    c('TC5A', 'Remote service in', ['remoteServiceIn'], 12000, 40),
    c('TC5B', 'Remote out', ['remoteServiceOut'], 0, 10),
    c('TC6', 'Mill Ford', ['timeControl'], 9000, 25),
    s('SS6', 'Mill Ford 2', 8700),
    c('TC6A', 'Service in', ['serviceIn'], 25000, 45),
    c('TC6B', 'Service out / parc ferme', ['serviceOut'], 0, 45),
    c('TC6C', 'Leg 2 start', ['start'], 0, 720, 2),
    c('TC7', 'Saddle', ['timeControl'], 30000, 45, 2),
    s('SS7', 'Saddle', 17800, 2),
    c('TC8', 'Long Ridge', ['timeControl'], 12000, 45, 2),
    s('SS8', 'Long Ridge 2', 21300, 2),
    c('TC8A', 'Finish', ['finish'], 24000, 60, 2),
  ],
};
const services = servicesOf(itinerary);
const rows = [
  {
    id: 'a',
    label: 'Front pads',
    fromMetres: 70600,
    toMetres: 196600,
    limitMetres: 128000,
    verdict: 'doNow' as const,
  },
  {
    id: 'b',
    label: 'Air filter',
    fromMetres: 0,
    toMetres: 196600,
    limitMetres: 210000,
    verdict: 'ifTime' as const,
  },
  {
    id: 'c',
    label: 'Gearbox oil',
    fromMetres: 0,
    toMetres: 301700,
    limitMetres: null,
    verdict: 'leave' as const,
  },
];
export default function Gallery() {
  const now = useNow();
  const [open, setOpen] = useState(false);
  const [place, setPlace] = useState<CarPlace | null>('frontLeft');
  const form = useForm({
    defaultValues: { car: '', km: '', drive: '', surface: 'gravel', words: '', who: [] as string[] },
  });
  const kept = useKeptForm('gallery', form);
  return (
    <PageFrame
      where="Car 14, Service B"
      links={[
        { href: '/gallery/', label: 'Service' },
        { href: '/a/', label: 'Jobs' },
        { href: '/b/', label: 'Snags' },
        { href: '/c/', label: 'Event' },
      ]}
      connection={{ status: 'cutOff', waiting: 3 }}
    >
      <Stack gap="large">
        <PageHeader
          above="Quarry Forest Rally"
          title="What this car needs"
          facts={['Car 14', 'Service B', '20 min', 'in 12:41', 'out 13:01']}
          actions={
            <>
              <Button look="main">Print the sheet</Button>
              <LinkButton href="/">Back</LinkButton>
            </>
          }
        />
        <RouteStrip itinerary={itinerary} services={services} rows={rows} hereMetres={70600} />
        <Stack across gap="large">
          <Countdown large label="Car must leave in" until={(now ?? 0) + 754} now={now} />
          <Countdown large label="Car must leave in" until={(now ?? 0) - 61} now={now} overWords="late" />
          <TimeOfDay large label="In" time="12:41" />
          <Countdown label="Last safe start" until={(now ?? 0) + 111} now={now} />
        </Stack>
        <Sheet title="States" aside={<StateMark state="doNow" />}>
          <Stack across>
            {(
              [
                'doNow',
                'ifTime',
                'leave',
                'open',
                'claimed',
                'underWay',
                'done',
                'carriedOver',
                'notNeeded',
              ] as const
            ).map((x) => (
              <StateMark key={x} state={x} />
            ))}
          </Stack>
        </Sheet>
        <CarPlan
          label="Where is it?"
          chosen={place}
          onChoose={setPlace}
          counts={{ frontLeft: 3, engineBay: 1, underCar: 2, wholeCar: 1 }}
        />
        <Sheet title="Form">
          {kept.restored ? <Notice title="Still here">What you typed before is back.</Notice> : null}
          <TextField label="Car number" hint="As on the doors." {...form.register('car')} />
          <NumberField
            label="Road distance"
            unit="km"
            error="Road distance: write a number such as 12.4."
            {...form.register('km')}
          />
          <SelectField
            label="Drive"
            unchosen="Choose …"
            options={[
              { value: 'front', label: 'Front' },
              { value: 'four', label: 'Four wheels' },
            ]}
            optional
            {...form.register('drive')}
          />
          <ChoiceGroup
            label="Surface"
            across
            choices={[
              { value: 'gravel', label: 'Gravel' },
              { value: 'tarmac', label: 'Tarmac' },
              { value: 'snow', label: 'Snow', disabled: true },
            ]}
            {...form.register('surface')}
          />
          <ChoiceGroup
            label="Who is here"
            pick="many"
            choices={[
              { value: 'a', label: 'Ola', hint: 'may sign' },
              { value: 'b', label: 'Mika' },
            ]}
            error="Choose at least one person."
            {...form.register('who')}
          />
          <TextArea label="Snag" {...form.register('words')} />
          <Stack across>
            <Button look="main">Save</Button>
            <Button>Plain</Button>
            <Button look="quiet">Quiet</Button>
            <Button busy busyWords="Saving …">
              Save
            </Button>
            <Button disabled>Off</Button>
            <Button onClick={() => setOpen(true)}>Open dialog</Button>
          </Stack>
        </Sheet>
        <Stack>
          <Notice>The out-time is worked out from the in-time the control wrote.</Notice>
          <Notice kind="warning">Exhaust hot until 12:55.</Notice>
          <Notice kind="problem">
            Row 4, column 3: “12,x” is no distance. Write kilometres such as 12.4.
          </Notice>
        </Stack>
        <Table
          caption="Jobs at Service B"
          columns={[
            { key: 'n', heading: 'Job', cell: (r: { n: string; m: number; w: string }) => r.n, leads: true },
            { key: 'm', heading: 'Minutes', cell: (r) => r.m, figures: true },
            { key: 'w', heading: 'Who', cell: (r) => r.w },
          ]}
          rows={[
            { n: 'Round: front left corner', m: 4, w: 'Ola' },
            { n: 'Front pads', m: 11, w: 'Mika and Ola' },
          ]}
          rowKey={(r) => r.n}
        />
        <StepList
          label="Steps"
          steps={[
            { title: 'Car', state: 'done' },
            { title: 'Itinerary', detail: 'Paste it or fill in the short form', state: 'now' },
            { title: 'People', state: 'later' },
          ]}
        />
        <Disclosure summary="More">Words.</Disclosure>
        <EmptyState title="No itinerary yet" action={<Button look="main">Paste the itinerary</Button>}>
          Without it nothing can be told about services.
        </EmptyState>
        <LoadingState />
        <ErrorState sentence="The itinerary could not be fetched." onTryAgain={() => {}}>
          <p>What you entered is kept.</p>
        </ErrorState>
        <OfflineBar status="sending" waiting={1} />
        <Dialog
          open={open}
          onClose={() => setOpen(false)}
          title="Re-open this job?"
          actions={<Button look="main">Re-open</Button>}
        >
          <p>It was closed by Mika at 12:50.</p>
        </Dialog>
      </Stack>
    </PageFrame>
  );
}
