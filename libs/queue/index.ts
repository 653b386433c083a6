export { checkRedis, RedisRefused } from './check-redis';
export { startInProcess } from './in-process-runner';
export { handlersByJob, jobId, runJob, JOBS, type Handler, type Handlers, type JobName, type JobPayload } from './jobs';
export { startQueueWorker } from './queue-worker';
export { JOB_SETTINGS, PREFIX, QUEUE } from './settings';
export { relayTurn, startRelay } from './relay';
export { repeat, type Running } from './repeat';
