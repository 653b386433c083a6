import type { FigureStore } from '../../usecases';
import type { Db } from '../db';
import { callbacksOverTime } from './callbacks-over-time';
import { flaggedByBench, flaggedByPart } from './flagged-share';
import { timeInStage } from './time-in-stage';
import { unsettledBuildDates } from './unsettled-build-dates';
import { wrongParts } from './wrong-parts';

export function figureStore(db: Db, zone: string): FigureStore {
  return {
    flaggedByBench: (scope) => flaggedByBench(db, scope, zone),
    flaggedByPart: (scope, most) => flaggedByPart(db, scope, most, zone),
    callbacks: (buckets, locationId) => callbacksOverTime(db, buckets, locationId, zone),
    timeInStage: (scope) => timeInStage(db, scope, zone),
    unsettledBuildDates: (scope) => unsettledBuildDates(db, scope, zone),
    wrongParts: (scope, most) => wrongParts(db, scope, most, zone),
  };
}
