/** Every kind of problem an itinerary can have. The names are stable: screens and logs may rest on them. */
export type ItineraryProblemCode =
  // The text as a whole
  | 'text-too-long'
  | 'too-many-rows'
  | 'empty-table'
  | 'open-quote'
  | 'header-missing'
  | 'column-missing'
  | 'column-twice'
  | 'column-unknown'
  // One row or cell
  | 'too-many-cells'
  | 'headings-assumed'
  | 'road-column-missing'
  | 'line-left-out'
  | 'id-assumed'
  | 'figure-missing'
  | 'untimed-road-added'
  | 'weekday-differs'
  | 'printed-for-car-zero'
  | 'decimal-comma'
  | 'unknown-row-kind'
  | 'leg-date-malformed'
  | 'leg-out-of-order'
  | 'leg-empty'
  | 'number-malformed'
  | 'time-malformed'
  | 'section-malformed'
  | 'interval-malformed'
  | 'interval-twice'
  | 'role-unknown'
  | 'role-unclear'
  | 'cell-misplaced'
  | 'total-mismatch'
  | 'total-differs'
  // Names
  | 'duplicate-id'
  | 'id-malformed'
  | 'name-missing'
  | 'roles-malformed'
  | 'repeat-unknown'
  | 'stage-control-number'
  // Order
  | 'stage-without-control'
  | 'stage-without-next-control'
  | 'section-order'
  | 'service-without-in'
  | 'service-without-out'
  | 'service-ends-before-it-starts'
  | 'halt-unpaired'
  // Distances
  | 'stage-km-missing'
  | 'stage-km-absurd'
  | 'road-km-missing'
  | 'road-km-absurd'
  | 'road-km-before-start'
  | 'km-negative'
  // Times
  | 'zone-unknown'
  | 'time-missing'
  | 'time-backwards'
  | 'time-leap'
  | 'time-mismatch'
  | 'target-zero'
  | 'target-absurd'
  | 'gap-absurd'
  | 'interval-absurd'
  | 'clock-ambiguous'
  | 'clock-skipped';

/** Which problems are told but do not stop saving. All others do. */
export const WARNING_CODES: ReadonlySet<ItineraryProblemCode> = new Set<ItineraryProblemCode>([
  'column-unknown',
  'headings-assumed',
  'road-column-missing',
  'line-left-out',
  'id-assumed',
  'figure-missing',
  'untimed-road-added',
  'weekday-differs',
  'printed-for-car-zero',
  'role-unclear',
  'total-differs',
  'stage-control-number',
  'halt-unpaired',
  'road-km-missing',
  'road-km-before-start',
  'clock-ambiguous',
  'clock-skipped',
]);
