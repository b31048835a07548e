/**
 * The key of readings that may be compared: never over two axles, two surfaces or two compounds. What wears a front
 * pad says nothing of a rear one.
 *
 * @example
 * wearGroup({ axle: 'front', surface: 'gravel', compound: 'medium' }) // 'front|gravel|medium'
 */
export function wearGroup(of: { axle: 'front' | 'rear'; surface: string; compound: string }): string {
  return [of.axle, of.surface, of.compound].map((part) => part.replaceAll('|', '/')).join('|');
}

/**
 * The axle of a position such as `FL` or `RR outer`; null for one that names no wheel.
 *
 * @example
 * axleOfPosition('RR outer') // 'rear'
 */
export function axleOfPosition(position: string): 'front' | 'rear' | null {
  const wheel = position.split(' ')[0];
  if (wheel === 'FL' || wheel === 'FR') return 'front';
  return wheel === 'RL' || wheel === 'RR' ? 'rear' : null;
}
