export { actionArgs } from '@halfshaft/contract';
