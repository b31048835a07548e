/** Bounds beyond which a figure is taken for a slip of the pen (common practice, no source). */
export const MAX_STAGE_METRES = 100_000;
export const MAX_ROAD_METRES = 500_000;
export const MAX_TARGET_SECONDS = 6 * 3600;
/** In parc fermé within a leg, overnight at the longest. */
export const MAX_PARC_FERME_SECONDS = 16 * 3600;
/** From one leg to the next where a date says so. */
export const MAX_BETWEEN_LEGS_SECONDS = 14 * 86_400;
export const MAX_GAP_SECONDS = 30 * 60;
export const MAX_START_INTERVAL_SECONDS = 3600;
export const MAX_STAGE_METRES_PER_HOUR = 200_000;

export const MAX_SECTION = 9999;

export const MAX_TEXT_CHARACTERS = 1_000_000;
export const MAX_TABLE_ROWS = 2000;

/** Printed sums are rounded to 10 m a row; sums over a leg may drift further. */
export const ROW_TOTAL_TOLERANCE_METRES = 10;
export const LEG_TOTAL_TOLERANCE_METRES = 50;
