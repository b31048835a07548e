import './without-eval';

export * from './bulletin';
export * from './car';
export * from './card';
export * from './event';
export * from './ids';
export * from './invite';
export * from './organiser';
export * from './outcome';
export * from './people';
export * from './photo';
export * from './retirement';
export * from './start-list';
export * from './team';
export * from './words';
export * from './work';
