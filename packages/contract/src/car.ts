import { carId, teamId } from './ids';
import { shortText } from './words';
import * as z from './zod';

export const driveName = z.enum(['front', 'rear', 'four'], 'Choose which wheels are driven.');
export const surfaceName = z.enum(['gravel', 'tarmac', 'snow'], 'Choose the surface.');

const carFields = { name: shortText('The name of the car', 60), drive: driveName, surface: surfaceName };

export const carRow = z.object({ carId, ...carFields });
export type CarRow = z.infer<typeof carRow>;

export const listCarsInput = z.object({ teamId });
export const listCarsOutput = z.array(carRow);

/** The cards a new car begins with: none, the few that most cars share, or everything a club-level car asks for. */
export const starterSet = z.enum(['none', 'small', 'full'], 'Choose the cards the car begins with.');
export type StarterSet = z.infer<typeof starterSet>;

export const createCarInput = z.object({ teamId, ...carFields, starterCards: starterSet });
export const createCarOutput = z.object({ carId });

export const updateCarInput = z.object({ teamId, carId, ...carFields });
