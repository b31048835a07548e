import { z } from 'zod';
import { carId, teamId } from './ids';
import { shortText } from './words';

export const driveName = z.enum(['front', 'rear', 'four'], 'Choose which wheels are driven.');
export const surfaceName = z.enum(['gravel', 'tarmac', 'snow'], 'Choose the surface.');

const carFields = { name: shortText('The name of the car', 60), drive: driveName, surface: surfaceName };

export const carRow = z.object({ carId, ...carFields });
export type CarRow = z.infer<typeof carRow>;

export const listCarsInput = z.object({ teamId });
export const listCarsOutput = z.array(carRow);

export const createCarInput = z.object({ teamId, ...carFields, withStarterCards: z.boolean() });
export const createCarOutput = z.object({ carId });

export const updateCarInput = z.object({ teamId, carId, ...carFields });
