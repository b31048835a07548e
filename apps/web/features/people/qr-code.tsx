import { create } from 'qrcode';
import styles from './qr-code.module.css';
import { qrPath } from './qr-path';

/** Readers need this many light modules around a code (ISO/IEC 18004). */
const MARGIN = 4;

/** A link as a code for a phone's camera: black on white, by night too. */
export function QrCode({ link, label }: { link: string; label: string }) {
  const { modules } = create(link, { errorCorrectionLevel: 'M' });
  const side = modules.size + 2 * MARGIN;
  return (
    <svg
      className={styles.code}
      viewBox={`${-MARGIN} ${-MARGIN} ${side} ${side}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect className={styles.light} x={-MARGIN} y={-MARGIN} width={side} height={side} />
      <path className={styles.dark} d={qrPath(modules)} />
    </svg>
  );
}
