import { Sheet } from '@/components/sheet';
import { PhotoStrip } from '../photos/photo-strip';
import type { LoadedWork } from '../work/work-page';
import styles from './log.module.css';
import type { LogLine } from './log-line';

/** The lines, a sheet for each day. */
export function LogDays({ lines, work }: { lines: readonly LogLine[]; work: LoadedWork }) {
  const days = [...new Set(lines.map((line) => line.day))];
  return days.map((day) => (
    <Sheet key={day} title={day}>
      <ol className={styles.list}>
        {lines
          .filter((line) => line.day === day)
          .map((line) => (
            <li key={line.seq} className={styles.line}>
              <time className={styles.clock}>{line.clock}</time>
              <div>
                <p>{line.sentence}</p>
                {line.found.map((words) => (
                  <p key={words} className={styles.found}>
                    {words}
                  </p>
                ))}
                {line.photo ? <PhotoStrip work={work} photos={[line.photo]} /> : null}
                {line.remarks.map((remark) => (
                  <p key={remark} className={styles.remark}>
                    {remark}
                  </p>
                ))}
                <p className={styles.facts}>
                  {[line.car, line.isWaiting ? 'not sent yet' : `no. ${line.seq}`]
                    .filter(Boolean)
                    .join(' · ')}
                </p>
              </div>
            </li>
          ))}
      </ol>
    </Sheet>
  ));
}
