import type { ReadRow, ReadTable } from '@halfshaft/itinerary';
import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import { CellBox, type CellBoxProps } from './cell-box';
import { headingName } from './heading-name';
import { rowName } from './mend-row';
import styles from './mend-table.module.css';
import { ProblemLine } from './problem-line';
import { RowNumber } from './row-number';
import { RowTools } from './row-tools';
import { RowWriter } from './row-writer';
import type { RowHands, RowWork } from './use-row-hands';

export interface RowToMendProps extends Pick<CellBoxProps, 'onMend' | 'onGoOn'> {
  table: ReadTable;
  /** Index of each column that is shown. */
  columns: readonly number[];
  /** Begins the ids of its sentences. */
  id: string;
  row: ReadRow;
  rowIndex: number;
  onGoToRow: (row: number) => void;
  hands: RowHands;
  /** Whether its number is the one that Tab reaches. */
  isStop: boolean;
}

/** Kept on one line, unlike words. */
const FIGURES = /^[\d.,:()]+$/;

/** One row of the table, and below it what is said of it. */
export function RowToMend(props: RowToMendProps) {
  const { columns, row } = props;
  const isSaid = hasProblems(row);
  return (
    <>
      <Writer {...props} works={['above']} />
      <tr
        className={classNames(styles.row, isSaid && styles.saidOf)}
        onFocus={() => props.hands.reach(props.rowIndex)}
      >
        <th scope="row" className={styles.number}>
          <RowNumber {...props} />
        </th>
        {columns.map((index) => (
          <Cell key={index} {...props} index={index} />
        ))}
      </tr>
      <Tools {...props} />
      {isSaid ? (
        <tr className={styles.saidRow}>
          <td colSpan={columns.length + 1} className={styles.said}>
            <Sentences {...props} />
          </td>
        </tr>
      ) : null}
      <Writer {...props} works={['anew', 'below']} />
    </>
  );
}

function Tools({ columns, row, rowIndex, hands }: RowToMendProps) {
  if (hands.open?.rowIndex !== rowIndex || hands.open.work !== 'choose') return null;
  return (
    <ToolRow columnCount={columns.length + 1}>
      <RowTools
        name={rowName(row)}
        onTurnTo={(work) => hands.turnTo(rowIndex, work)}
        onDrop={() => hands.drop(rowIndex)}
      />
    </ToolRow>
  );
}

function Writer(props: RowToMendProps & { works: readonly RowWork[] }) {
  const { columns, table, rowIndex, hands, works } = props;
  const work = hands.open?.rowIndex === rowIndex ? hands.open.work : null;
  if (work === null || work === 'choose' || !works.includes(work)) return null;
  return (
    <ToolRow columnCount={columns.length + 1}>
      <RowWriter
        key={work}
        table={table}
        rowIndex={rowIndex}
        work={work}
        onPut={(cells) => hands.put(rowIndex, work, cells)}
        onLeave={() => hands.turnTo(rowIndex, null)}
      />
    </ToolRow>
  );
}

function ToolRow({ columnCount, children }: { columnCount: number; children: ReactNode }) {
  return (
    <tr className={styles.toolRow}>
      <td colSpan={columnCount} className={styles.toolCell}>
        {children}
      </td>
    </tr>
  );
}

function Cell(props: RowToMendProps & { index: number }) {
  const { table, id, row, rowIndex, index, onMend, onGoOn } = props;
  const cell = row.cells[index] ?? { text: '', problems: [] };
  const heading = headingName(table.headings[index], index);
  const isBox = cell.problems.length > 0;
  return (
    <td
      className={classNames(styles.cell, isBox && styles.withBox, cell.text === '' && !isBox && styles.blank)}
    >
      <span className={styles.label} aria-hidden="true">
        {heading}
      </span>
      {isBox ? (
        <CellBox
          cell={cell}
          place={{ rowIndex, column: index + 1 }}
          name={`${heading}, row ${row.sourceRow}`}
          describedBy={cell.problems.map((_, at) => sentenceId(id, index, at)).join(' ')}
          onMend={onMend}
          onGoOn={onGoOn}
        />
      ) : (
        <span className={classNames(FIGURES.test(cell.text) && styles.figures)}>{cell.text}</span>
      )}
    </td>
  );
}

/** What is said of the cells of a row, and of the row. */
function Sentences({ id, row, onGoToRow }: RowToMendProps) {
  return (
    <>
      {row.cells.flatMap((cell, index) =>
        cell.problems.map((problem, at) => (
          <ProblemLine
            key={`${problem.column} ${problem.code} ${problem.message}`}
            problem={problem}
            id={sentenceId(id, index, at)}
            hasBox
            onGoToRow={onGoToRow}
          />
        )),
      )}
      {row.problems.map((problem) => (
        <ProblemLine key={`${problem.code} ${problem.message}`} problem={problem} onGoToRow={onGoToRow} />
      ))}
    </>
  );
}

export function hasProblems(row: ReadRow): boolean {
  return row.problems.length > 0 || row.cells.some((cell) => cell.problems.length > 0);
}

function sentenceId(rowId: string, index: number, at: number): string {
  return `${rowId}c${index}.${at}`;
}
