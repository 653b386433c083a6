import { existsSync } from 'node:fs';
import { say } from './say';

export interface ContainerPlan {
  readonly image: string;
  readonly port: number;
  readonly env?: Record<string, string>;
  readonly command?: string[];
  /** A line of its log that says it is ready, and how often that line comes. */
  readonly ready: readonly [line: RegExp, times: number];
}

const FETCHED_AND_STARTED_WITHIN_MS = 120_000;

/**
 * Starts a container where Docker answers; undefined where it does not, or when the image cannot be fetched (said
 * aloud). The usual watcher that removes containers is off: it would end with the first process of the run that
 * ends, so the end of the run removes them instead.
 */
export async function startContainer(plan: ContainerPlan): Promise<{ id: string; address: string } | undefined> {
  if (!process.env['DOCKER_HOST'] && !existsSync('/var/run/docker.sock')) return undefined;
  process.env['TESTCONTAINERS_RYUK_DISABLED'] = 'true';
  const { GenericContainer, getContainerRuntimeClient, Wait } = await import('testcontainers');
  const answers = await getContainerRuntimeClient().then(
    () => true,
    () => false,
  );
  if (!answers) return undefined;
  try {
    const started = await new GenericContainer(plan.image)
      .withExposedPorts(plan.port)
      .withEnvironment(plan.env ?? {})
      .withCommand(plan.command ?? [])
      .withWaitStrategy(Wait.forLogMessage(...plan.ready))
      .withStartupTimeout(FETCHED_AND_STARTED_WITHIN_MS)
      .start();
    return { id: started.getId(), address: `${started.getHost()}:${started.getMappedPort(plan.port)}` };
  } catch (error) {
    say(`Docker answers but '${plan.image}' did not start (${(error as Error).message}); going on without it.`);
    return undefined;
  }
}

/** Stops and removes a container by its id. */
export async function removeContainer(id: string): Promise<void> {
  const { getContainerRuntimeClient } = await import('testcontainers');
  const { container } = await getContainerRuntimeClient();
  const found = container.getById(id);
  await container.stop(found, { timeout: 1_000 });
  await container.remove(found, { removeVolumes: true });
}
