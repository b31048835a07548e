import { findRepeat } from '../find-repeat';
import type { ControlRole, Point, StagePoint } from '../model';
import { readWallClock } from '../read-values';
import { estimateStageEnd } from '../stage-end';
import { instantsOf } from '../wall-clock';
import { nameStage } from './name-stage';
import {
  QUICK_ROAD_METRES_PER_HOUR,
  QUICK_STAGE_METRES_PER_HOUR,
  type QuickDay,
  type QuickForm,
  type QuickLoop,
  type QuickStage,
} from './quick-form';

/** Puts the points of a quick form one after the other and keeps the clock of the first car. */
export class QuickBuilder {
  readonly points: Point[] = [];
  private at = 0;
  private leg = 0;
  private stages = 0;
  private letters = 0;
  private refuels = 0;
  private loopBefore: StagePoint[] = [];

  constructor(private readonly form: QuickForm) {}

  addDay(day: QuickDay, isLastDay: boolean): void {
    this.startDay(day);
    const last = day.loops.length - 1;
    for (const [index, loop] of day.loops.entries()) {
      const end = index < last ? null : isLastDay ? FINISH : PARC_FERME;
      this.addLoop(loop, end);
    }
  }

  private startDay({ date, firstCarAt, serviceMinutes = 0 }: QuickDay): void {
    const clock = readWallClock(firstCarAt);
    this.at = (clock && instantsOf(date, clock, this.form.timeZone).instants[0]) ?? 0;
    this.leg += 1;
    const isFirst = this.leg === 1;
    const halts: Halt[] = [isFirst ? START : PARC_FERME_OUT];
    if (serviceMinutes > 0) halts.push(SERVICE_IN);
    this.addHalt(halts, 0, null, isFirst ? 'TC0' : this.nextId());
    if (serviceMinutes > 0) this.addHalt([SERVICE_OUT], 0, serviceMinutes * SECONDS_IN_MINUTE);
  }

  private addLoop(loop: QuickLoop, end: Halt | null): void {
    const hasService = loop.serviceMinutes > 0;
    const roads = shares(loop.roadMetres, loop.stages.length + (hasService || end ? 1 : 0));
    if (loop.refuel) this.addRefuel();
    const stages = loop.stages.map((stage, index) => {
      const repeated = loop.again ? this.loopBefore[index] : undefined;
      return this.addStage(stage, roads[index] ?? 0, repeated ?? null);
    });
    this.loopBefore = stages;
    const home = roads[loop.stages.length] ?? 0;
    if (hasService) this.addService(loop, home, end);
    else if (end) this.addHalt([end], home, this.secondsTo(home));
  }

  private addStage(stage: QuickStage, roadMetres: number, sameAs: StagePoint | null): StagePoint {
    const { gapSeconds } = this.form;
    const allowed = this.secondsTo(roadMetres);
    this.stages += 1;
    this.letters = 0;
    const id = `SS${this.stages}`;
    const earlier = this.points.filter((point): point is StagePoint => point.kind === 'stage');
    const repeated = sameAs?.stageMetres === stage.metres ? sameAs : null;
    const name = nameStage(id, stage, repeated, earlier);
    this.addControl(`TC${this.stages}`, name, ['timeControl'], roadMetres, allowed);
    this.at += gapSeconds;
    const point: StagePoint = {
      ...{ kind: 'stage', id, name, leg: this.leg, section: this.leg, firstCarAt: this.at },
      ...{ stageMetres: stage.metres, gapSeconds, repeatOf: findRepeat(name, earlier) },
    };
    this.points.push(point);
    return point;
  }

  private addService(loop: QuickLoop, roadMetres: number, end: Halt | null): void {
    const isRemote = loop.serviceKind === 'remoteService';
    this.addHalt([isRemote ? REMOTE_IN : SERVICE_IN], roadMetres, this.secondsTo(roadMetres));
    const out = [isRemote ? REMOTE_OUT : SERVICE_OUT, ...(end ? [end] : [])];
    this.addHalt(out, 0, loop.serviceMinutes * SECONDS_IN_MINUTE);
  }

  /** Untimed, where the road begins: after a stage, at its end as far as that is known, cut to the minute. */
  private addRefuel(): void {
    const before = this.points.at(-1);
    this.refuels += 1;
    const id = `RZ${this.refuels}`;
    const place = { leg: this.leg, section: this.leg, firstCarAt: this.at };
    if (before?.kind === 'stage') {
      const end = estimateStageEnd({
        ...{ stageStartsAt: before.firstCarAt, stageMetres: before.stageMetres, roadMetres: 0 },
        ...{ nextControlAt: null, allowedSeconds: null, roadTimedFrom: 'stageStart' },
      });
      place.firstCarAt = Math.max(this.at, Math.floor(end / SECONDS_IN_MINUTE) * SECONDS_IN_MINUTE);
    }
    const refuel = { kind: 'control' as const, id, name: 'Refuel', roles: ['refuel' as const], ...place };
    this.points.push({ ...refuel, roadMetres: 0, allowedSeconds: null });
  }

  /** From the last timed point over this road, a stage just begun included; whole minutes, one at least. */
  private secondsTo(roadMetres: number): number {
    const last = this.points.findLast((point) => point.kind === 'stage' || !point.roles.includes('refuel'));
    const stageMetres = last?.kind === 'stage' ? last.stageMetres : 0;
    const speed = this.form.roadSpeedMetresPerHour ?? QUICK_ROAD_METRES_PER_HOUR;
    const minutes = (stageMetres * 60) / QUICK_STAGE_METRES_PER_HOUR + (roadMetres * 60) / speed;
    return Math.max(1, Math.ceil(minutes)) * SECONDS_IN_MINUTE;
  }

  private addHalt(halts: readonly Halt[], roadMetres: number, allowed: number | null, id = this.nextId()) {
    const name = halts.map((halt) => halt.name).join(' / ');
    const roles = halts.map((halt) => halt.role);
    this.addControl(id, name, roles, roadMetres, allowed);
  }

  private addControl(
    id: string,
    name: string,
    roles: ControlRole[],
    roadMetres: number,
    allowedSeconds: number | null,
  ): void {
    this.at += allowedSeconds ?? 0;
    const place = { leg: this.leg, section: this.leg, firstCarAt: this.at };
    this.points.push({ kind: 'control', id, name, roles, ...place, roadMetres, allowedSeconds });
  }

  private nextId(): string {
    this.letters += 1;
    return `TC${this.stages}${String.fromCharCode(64 + this.letters)}`;
  }
}

interface Halt {
  name: string;
  role: ControlRole;
}

const SECONDS_IN_MINUTE = 60;
const START: Halt = { name: 'Start', role: 'start' };
const FINISH: Halt = { name: 'Finish', role: 'finish' };
const PARC_FERME: Halt = { name: 'Parc fermé in', role: 'parcFermeIn' };
const PARC_FERME_OUT: Halt = { name: 'Parc fermé out', role: 'parcFermeOut' };
const SERVICE_IN: Halt = { name: 'Service in', role: 'serviceIn' };
const SERVICE_OUT: Halt = { name: 'Service out', role: 'serviceOut' };
const REMOTE_IN: Halt = { name: 'Remote service in', role: 'remoteServiceIn' };
const REMOTE_OUT: Halt = { name: 'Remote service out', role: 'remoteServiceOut' };

/** Whole metres in even shares; what is left over goes to the last. */
function shares(metres: number, count: number): number[] {
  const share = Math.floor(metres / Math.max(1, count));
  return Array.from({ length: count }, (_, index) =>
    index === count - 1 ? metres - share * (count - 1) : share,
  );
}
