import { Button } from '@/components/button';
import styles from './mend-table.module.css';

/** Stands where a row was taken out. */
export function RowPutBack({ columnCount, onPutBack }: { columnCount: number; onPutBack: () => void }) {
  return (
    <tr className={styles.toolRow}>
      <td colSpan={columnCount} className={styles.toolCell}>
        <div className={styles.putBack}>
          <span>A row was taken out here.</span>
          <Button look="quiet" data-put-back="" onClick={onPutBack}>
            Put the row back
          </Button>
        </div>
      </td>
    </tr>
  );
}
