import { Fragment, useId } from 'react';
import { CellBox } from './cell-box';
import { columnsInUse } from './columns-in-use';
import { headingName } from './heading-name';
import styles from './mend-table.module.css';
import { ProblemLine } from './problem-line';
import { RowPutBack } from './row-put-back';
import { hasProblems, RowToMend, type RowToMendProps } from './row-to-mend';

export type MendTableProps = Pick<RowToMendProps, 'table' | 'onMend' | 'onGoOn' | 'onGoToRow' | 'hands'>;

/** A longer table shows only its rows with problems, and of those so many. */
const MOST_ROWS = 250;
const MOST_ROWS_TO_MEND = 60;

/** The table as it was understood. A cell of which something is said is a box, and the words stand below its row. */
export function MendTable(props: MendTableProps) {
  const { table, hands } = props;
  const id = useId();
  const rows = table.rows.map((row, rowIndex) => ({ row, rowIndex }));
  const columns = columnsInUse(table);
  const isLong = rows.length > MOST_ROWS;
  const shown = isLong ? rows.filter(({ row }) => hasProblems(row)).slice(0, MOST_ROWS_TO_MEND) : rows;
  const stop = shown.some(({ rowIndex }) => rowIndex === hands.stop) ? hands.stop : shown[0]?.rowIndex;
  const putBack = <RowPutBack columnCount={columns.length + 1} onPutBack={hands.putBack} />;
  return (
    <div className={styles.place}>
      <HeadingBoxes {...props} id={id} />
      <table className={styles.table}>
        <caption className={styles.caption}>The table as it was understood</caption>
        <Headings table={table} columns={columns} />
        <tbody>
          {shown.map(({ row, rowIndex }) => (
            // By its place and not by its row in the text, which changes while the row stays the same.
            <Fragment key={rowIndex}>
              {hands.droppedAt === rowIndex ? putBack : null}
              <RowToMend
                {...props}
                columns={columns}
                id={`${id}${rowIndex}`}
                row={row}
                rowIndex={rowIndex}
                isStop={rowIndex === stop}
              />
            </Fragment>
          ))}
          {hands.droppedAt !== null && !shown.some(({ rowIndex }) => rowIndex === hands.droppedAt)
            ? putBack
            : null}
        </tbody>
      </table>
      {isLong ? (
        <p>The table has {rows.length} rows. The first ones with something to mend stand here.</p>
      ) : null}
    </div>
  );
}

function Headings({ table, columns }: Pick<RowToMendProps, 'table' | 'columns'>) {
  return (
    <thead className={styles.head}>
      <tr>
        <th scope="col" className={styles.heading}>
          Row
        </th>
        {columns.map((index) => (
          <th key={index} scope="col" className={styles.heading}>
            {headingName(table.headings[index], index)}
          </th>
        ))}
      </tr>
    </thead>
  );
}

/** Headings of which something is said, above the table: on a phone the table shows none. */
function HeadingBoxes({ table, id, onMend, onGoOn }: MendTableProps & { id: string }) {
  return table.headings.map((heading, index) => {
    if (heading.problems.length === 0) return null;
    const column = index + 1;
    const ids = heading.problems.map((_, at) => `${id}h${column}.${at}`);
    const name = `Heading of column ${column}`;
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: a column has nothing but its place
      <div key={index} className={styles.headingBox}>
        <span aria-hidden="true">{name}</span>
        <CellBox
          cell={heading}
          place={{ rowIndex: null, column }}
          name={name}
          describedBy={ids.join(' ')}
          onMend={onMend}
          onGoOn={onGoOn}
        />
        {heading.problems.map((problem, at) => (
          <ProblemLine key={`${problem.code} ${problem.message}`} problem={problem} id={ids[at]} />
        ))}
      </div>
    );
  });
}
