import type { CarPlace } from '@halfshaft/lifing';

/** The places of the car as screens and sheets name them. */
export const CAR_PLACE_NAMES: Record<CarPlace, string> = {
  engineBay: 'Engine bay',
  underCar: 'Under the car',
  frontLeft: 'Front left',
  frontRight: 'Front right',
  rearLeft: 'Rear left',
  rearRight: 'Rear right',
  allCorners: 'All four corners',
  cockpit: 'Cockpit',
  body: 'Body',
  boot: 'Boot',
  wholeCar: 'Whole car',
};

/** Those with a region of their own in the drawing, row by row from the front. */
export const DRAWN_PLACES: readonly CarPlace[] = [
  'frontLeft',
  'engineBay',
  'frontRight',
  'body',
  'cockpit',
  'underCar',
  'rearLeft',
  'boot',
  'rearRight',
];

/** Those that are not one spot: they stand below the drawing. */
export const WIDE_PLACES: readonly CarPlace[] = ['allCorners', 'wholeCar'];
