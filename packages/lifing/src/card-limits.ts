/** How much one card may hold. Read by the form's schema and by the table of cards, so that the two never differ. */
export const CARD_LIMITS = {
  nameCharacters: 80,
  intervals: 5,
  /** Ten thousand kilometres in metres, some thousands of hours in seconds: no limit of a rally car is larger. */
  amount: 10_000_000,
  /** The first second of the year 2100. */
  dueAt: 4_102_444_800,
  leastFactor: 250,
  mostFactor: 5000,
  leastSeconds: 30,
  mostSeconds: 14_400,
  people: 8,
  leastServiceSeconds: 36_000,
  looks: 30,
  lookCharacters: 120,
  readings: 12,
  readingNameCharacters: 60,
  unitCharacters: 12,
  decimals: 4,
  positions: 12,
  positionCharacters: 12,
  value: 1_000_000,
  cautionCharacters: 300,
  tools: 20,
  toolCharacters: 60,
  instructionCharacters: 600,
  starterCharacters: 60,
} as const;
