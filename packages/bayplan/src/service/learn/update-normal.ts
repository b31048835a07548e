/** A guess at a normal distribution: its mean and variance, and how many observations the guess is worth. */
export interface NormalGuess {
  mean: number;
  variance: number;
  worth: number;
}

export interface Weighed {
  value: number;
  weight: number;
}

/**
 * The guess after some observations: the conjugate update of the normal distribution with unknown mean and variance
 * (normal and scaled inverse chi-square; Gelman, Carlin, Stern, Dunson, Vehtari & Rubin, Bayesian Data Analysis, 3rd ed. 2013,
 * section 3.3), with one worth for mean and variance and the observations' weights for their number. Observations far from
 * the guess widen it.
 */
export function updateNormal(guess: NormalGuess, seen: readonly Weighed[]): NormalGuess {
  const weight = seen.reduce((sum, one) => sum + one.weight, 0);
  if (weight === 0) return guess;
  const average = seen.reduce((sum, one) => sum + one.weight * one.value, 0) / weight;
  const squares = seen.reduce((sum, one) => sum + one.weight * (one.value - average) ** 2, 0);
  const worth = guess.worth + weight;
  const between = ((guess.worth * weight) / worth) * (average - guess.mean) ** 2;
  return {
    mean: (guess.worth * guess.mean + weight * average) / worth,
    variance: (guess.worth * guess.variance + squares + between) / worth,
    worth,
  };
}
