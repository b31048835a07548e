import { findRepeat } from '../find-repeat';
import type { ControlRole, Itinerary, Point, StagePoint } from '../model';
import { readWallClock } from '../read-values';
import { requireOptions } from '../require-options';
import { instantsOf, type WallClock } from '../wall-clock';
import {
  QUICK_ROAD_METRES_PER_HOUR,
  QUICK_STAGE_METRES_PER_HOUR,
  type QuickForm,
  type QuickLoop,
} from './quick-form';

/**
 * An itinerary from what is known of an event before its own is out: per loop the stages, the road and the service
 * after it. All of it is one leg and one section. The road of a loop is shared evenly between its stages; times follow
 * from the road speed and 80 km/h on stages (common practice, no source), in whole minutes, rounded up. They are an
 * estimate, and `quickFormInWords` says so; the printed itinerary replaces them.
 *
 * Throws when a figure is none: a stage without length, a road below 0, no loop, no stage at all.
 *
 * @example
 * itineraryFromLoops({ timeZone: 'Europe/Vienna', startDate: '2026-06-12', firstCarAt: '09:00', startIntervalSeconds: 60,
 *   gapSeconds: 180, loops: [{ stages: [{ metres: 8100 }], roadMetres: 30_000, serviceMinutes: 30 }] }).points.length // 5
 */
export function itineraryFromLoops(form: QuickForm): Itinerary {
  const clock = requireForm(form);
  const builder = new Builder(form, clock);
  for (const [index, loop] of form.loops.entries()) builder.addLoop(loop, index === form.loops.length - 1);
  const { timeZone, startIntervalSeconds: intervalSeconds } = form;
  return {
    timeZone,
    roadTimedFrom: 'stageStart',
    points: builder.points,
    startBlocks: [{ section: 1, fromPosition: 1, intervalSeconds }],
  };
}

class Builder {
  readonly points: Point[] = [];
  private at: number;
  private stages = 0;
  private letters = 0;

  constructor(
    private readonly form: QuickForm,
    clock: WallClock,
  ) {
    this.at = instantsOf(form.startDate, clock, form.timeZone).instants[0] ?? 0;
    this.addControl('TC0', 'Start', ['start'], 0, null);
  }

  addLoop(loop: QuickLoop, isLast: boolean): void {
    const hasService = loop.serviceMinutes > 0;
    const roads = shares(loop.roadMetres, loop.stages.length + (hasService || isLast ? 1 : 0));
    for (const [index, { name, metres }] of loop.stages.entries()) {
      this.addStage(name ?? '', metres, roads[index] ?? 0);
    }
    const home = roads[loop.stages.length] ?? 0;
    if (hasService) this.addService(loop, home, isLast);
    else if (isLast) this.addControl(this.nextId(), 'Finish', ['finish'], home, this.secondsTo(home));
  }

  private addStage(name: string, stageMetres: number, roadMetres: number): void {
    const allowed = this.secondsTo(roadMetres);
    this.stages += 1;
    this.letters = 0;
    const id = `SS${this.stages}`;
    const title = name.trim() || id;
    this.addControl(`TC${this.stages}`, title, ['timeControl'], roadMetres, allowed);
    this.at += this.form.gapSeconds;
    const earlier = this.points.filter((point): point is StagePoint => point.kind === 'stage');
    this.points.push({
      kind: 'stage',
      id,
      name: title,
      leg: 1,
      section: 1,
      firstCarAt: this.at,
      stageMetres,
      gapSeconds: this.form.gapSeconds,
      repeatOf: findRepeat(title, earlier),
    });
  }

  private addService(loop: QuickLoop, roadMetres: number, isLast: boolean): void {
    const isRemote = loop.serviceKind === 'remoteService';
    const title = isRemote ? 'Remote service' : 'Service';
    this.addControl(
      this.nextId(),
      `${title} in`,
      [isRemote ? 'remoteServiceIn' : 'serviceIn'],
      roadMetres,
      this.secondsTo(roadMetres),
    );
    const out: ControlRole[] = [isRemote ? 'remoteServiceOut' : 'serviceOut'];
    if (isLast) out.push('finish');
    this.addControl(
      this.nextId(),
      `${title} out${isLast ? ' / Finish' : ''}`,
      out,
      0,
      loop.serviceMinutes * 60,
    );
  }

  /** From the last point over this road, a stage just begun included; whole minutes, one at least. */
  private secondsTo(roadMetres: number): number {
    const last = this.points.at(-1);
    const stageMetres = last?.kind === 'stage' ? last.stageMetres : 0;
    const speed = this.form.roadSpeedMetresPerHour ?? QUICK_ROAD_METRES_PER_HOUR;
    const minutes = (stageMetres * 60) / QUICK_STAGE_METRES_PER_HOUR + (roadMetres * 60) / speed;
    return Math.max(1, Math.ceil(minutes)) * 60;
  }

  private addControl(
    id: string,
    name: string,
    roles: ControlRole[],
    roadMetres: number,
    allowedSeconds: number | null,
  ): void {
    this.at += allowedSeconds ?? 0;
    const place = { leg: 1, section: 1, firstCarAt: this.at };
    this.points.push({ kind: 'control', id, name, roles, ...place, roadMetres, allowedSeconds });
  }

  private nextId(): string {
    this.letters += 1;
    return `TC${this.stages}${String.fromCharCode(64 + this.letters)}`;
  }
}

/** Whole metres in even shares; what is left over goes to the last. */
function shares(metres: number, count: number): number[] {
  const share = Math.floor(metres / Math.max(1, count));
  return Array.from({ length: count }, (_, index) =>
    index === count - 1 ? metres - share * (count - 1) : share,
  );
}

function requireForm(form: QuickForm): WallClock {
  requireOptions('itineraryFromLoops', form);
  const clock = readWallClock(form.firstCarAt);
  if (!clock)
    throw new RangeError(`itineraryFromLoops: “${form.firstCarAt}” is no time of day written HH:MM`);
  const demand = (name: string, value: number, least: number) => {
    if (!Number.isSafeInteger(value) || value < least) {
      throw new RangeError(`itineraryFromLoops: ${name} is a whole number from ${least}, not ${value}`);
    }
  };
  demand('startIntervalSeconds', form.startIntervalSeconds, 1);
  demand('gapSeconds', form.gapSeconds, 0);
  demand('roadSpeedMetresPerHour', form.roadSpeedMetresPerHour ?? QUICK_ROAD_METRES_PER_HOUR, 1000);
  demand('the number of stages', form.loops.flatMap((loop) => loop.stages).length, 1);
  for (const loop of form.loops) {
    demand('the number of stages in a loop', loop.stages.length, 1);
    demand('roadMetres', loop.roadMetres, 0);
    demand('serviceMinutes', loop.serviceMinutes, 0);
    for (const stage of loop.stages) demand('the metres of a stage', stage.metres, 1);
  }
  return clock;
}
