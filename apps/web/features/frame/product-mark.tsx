import styles from './product-mark.module.css';

/** A driveshaft seen from the side, one joint whole and one half: the product's own mark. */
export function ProductMark() {
  return (
    <svg className={styles.mark} viewBox="0 0 44 24" width="44" height="24" aria-hidden="true">
      <path className={styles.shaft} d="M15 12h16" />
      <circle className={styles.joint} cx="9" cy="12" r="7.5" />
      <circle className={styles.ring} cx="35" cy="12" r="7.5" />
      <path className={styles.joint} d="M35 4.5a7.5 7.5 0 0 1 0 15z" />
    </svg>
  );
}
