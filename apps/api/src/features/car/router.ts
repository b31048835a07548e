import {
  createCarInput,
  createCarOutput,
  listCarsInput,
  listCarsOutput,
  updateCarInput,
} from '@halfshaft/contract';
import { router, teamProcedure } from '../../trpc';
import { addCar, listCars, updateCar } from './service';

export const carRouter = router({
  list: teamProcedure
    .input(listCarsInput)
    .output(listCarsOutput)
    .query(({ ctx }) => listCars(ctx.tx)),

  create: teamProcedure
    .input(createCarInput)
    .output(createCarOutput)
    .mutation(({ ctx, input }) => addCar(ctx.tx, input, ctx.now)),

  update: teamProcedure.input(updateCarInput).mutation(({ ctx, input }) => updateCar(ctx.tx, input)),
});
