import { rolesOf } from './control-roles';
import { excerpt } from './excerpt';
import type { StageId } from './model';
import { readDuration, readGap, readIntervals, readKilometres, readWallClock } from './read-values';
import { KILOMETRES_TO_DO, type RowReader } from './row-reader';
import type { ColumnKey } from './table-columns';
import type { PointRow } from './table-row';

const STAGE_ID = /^(?:SS|SSS|STAGE)(\d{1,3}[A-Z]?)$/;
const CONTROL_ID = /^(?:[AM]?TC|MC)\d{1,3}[A-Z]{0,2}$/;
const REFUEL_ID = /^(?:RZ|REFUEL|REFUELLING|FUEL)(\d{0,3}[A-Z]?)$/;

const DURATION_TO_DO = 'Write hours and minutes as 0:44.';

/** A row of a control or a stage; null, and reported, when it is neither. */
export function readPoint(row: number, reader: RowReader): PointRow | null {
  const written = reader.text('id');
  const name = identify(written, reader.text('location'));
  if (!name) {
    const what =
      written === ''
        ? 'no control or stage is named in this row'
        : `“${excerpt(written)}” is no kind of row known here`;
    reader.tell(
      'id',
      'unknown-row-kind',
      `In row ${row}, ${what}. Write a control as TC5B, a stage as SS5, a refuel as RZ1, a new leg as Leg 2, sums as Total, or delete the row.`,
    );
    return null;
  }
  const isStage = name.kind === 'stage';
  const isDistanceToNext = name.id.startsWith('RZ') && /distance to next/i.test(reader.text('location'));
  return {
    type: 'point',
    row,
    kind: name.kind,
    id: name.id,
    name: reader.text('location') || name.id,
    roles: isStage ? null : readRoles(reader),
    ...readDistances(isStage, name.id, isDistanceToNext, reader),
    targetSeconds: reader.value('target', isStage ? readGap : readDuration, 'time-malformed', DURATION_TO_DO),
    clock: reader.value('due', readWallClock, 'time-malformed', 'Write the time of day as 08:13.'),
    gapSeconds: readOnlyOn(isStage, 'gap', 'stage', reader, () =>
      reader.value('gap', readGap, 'time-malformed', 'Write the gap in minutes, as 0:03.'),
    ),
    section: reader.value(
      'section',
      readSection,
      'section-malformed',
      'Write the section as a whole number from 1.',
    ),
    blocks: reader.value(
      'interval',
      readIntervals,
      'interval-malformed',
      'Write start intervals as 60 s, or as 120 s, from 11: 60 s.',
    ),
    repeatOf: isStage ? readRepeat(reader) : undefined,
    unreadable: reader.unreadable,
  };
}

function identify(written: string, location: string): { kind: 'control' | 'stage'; id: string } | null {
  const id = written.toUpperCase().replace(/[\s.\-_]/g, '');
  const stage = STAGE_ID.exec(id);
  if (stage) return { kind: 'stage', id: id.startsWith('SSS') ? id : `SS${stage[1]}` };
  if (CONTROL_ID.test(id)) return { kind: 'control', id };
  const refuel = REFUEL_ID.exec(id);
  if (refuel) return { kind: 'control', id: `RZ${refuel[1]}` };
  return id === '' && /^refuel/i.test(location) ? { kind: 'control', id: 'RZ' } : null;
}

function readRoles(reader: RowReader) {
  const written = reader.text('role');
  if (written === '') return null;
  const { roles } = rolesOf(written);
  if (roles.length > 0) return roles;
  reader.tell(
    'role',
    'role-unknown',
    `“${excerpt(written)}” is no role known here. Write for example service in, regroup out / service in, or time control, or leave the cell empty.`,
  );
  return null;
}

/**
 * A refuel row prints the distance to the next refuel, in brackets, under SS km, or announced in words; only a plain
 * figure under road km is road driven to get there.
 */
function readDistances(isStage: boolean, id: string, isDistanceToNext: boolean, reader: RowReader) {
  const isNotice =
    id.startsWith('RZ') &&
    (isDistanceToNext || reader.text('stageKm') !== '' || reader.text('roadKm').startsWith('('));
  if (isNotice) return { metres: 0, totalMetres: null };
  const kilometres = (key: ColumnKey) => () =>
    reader.value(key, readKilometres, 'number-malformed', KILOMETRES_TO_DO);
  const stageMetres = readOnlyOn(isStage, 'stageKm', 'stage', reader, kilometres('stageKm'));
  const roadMetres = readOnlyOn(!isStage, 'roadKm', 'control', reader, kilometres('roadKm'));
  return { metres: isStage ? stageMetres : roadMetres, totalMetres: kilometres('totalKm')() };
}

/** Reads a cell that belongs on one kind of row, and reports it on the other unless it is empty or zero. */
function readOnlyOn<T>(
  belongs: boolean,
  key: ColumnKey,
  on: 'stage' | 'control',
  reader: RowReader,
  read: () => T,
): T | null {
  if (belongs) return read();
  const cell = reader.text(key);
  if (cell !== '' && readKilometres(cell) !== 0) {
    const toDo =
      on === 'stage' ? 'Move it to the row of the stage.' : 'Move it to the row of the next control.';
    reader.tell(
      key,
      'cell-misplaced',
      `“${excerpt(cell)}” stands on the row of a ${on === 'stage' ? 'control' : 'stage'}, where it has no meaning. ${toDo}`,
    );
    reader.unreadable.add(key);
  }
  return null;
}

function readSection(cell: string): number | null {
  const number = /^(?:section |sec\.? )?(\d{1,4})$/i.exec(cell);
  return number && Number(number[1]) > 0 ? Number(number[1]) : null;
}

/** Undefined where nothing is written, null where "none" is. */
function readRepeat(reader: RowReader): StageId | null | undefined {
  const written = reader.text('repeatOf');
  if (written === '') return undefined;
  return /^(?:none|no)$/i.test(written) ? null : (identify(written, '')?.id ?? written);
}
