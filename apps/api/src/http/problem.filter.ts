import { Catch, HttpException, Inject, Logger, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { ZodSerializationException } from 'nestjs-zod';
import type { Problem } from '../../../../libs/contracts';
import { loggable, PasswordsBusyError } from '../../../../libs/store';
import { StoreContended } from '../../../../libs/usecases';
import type { SecurityLog } from '../auth/security-log';
import type { SignedInRequest } from '../auth/session.guard';
import { ElsewhereAwayError } from '../session/open-id';
import { SECURITY_LOG } from '../tokens';
import { ProblemError } from './problem-error';

/** Refusals of a person that the security log is told of beside every 403: nobody is signed in; a step out of its order. */
const NOTED: readonly string[] = ['not-signed-in', 'wrong-stage', 'gate-closed'];

/** Every error leaves through here as problem details (RFC 9457); what broke is logged, never told. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly log = new Logger('api');

  constructor(@Inject(SECURITY_LOG) private readonly security: SecurityLog) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const problem = problemOf(error);
    const { method, url: whole, ip, person, token } = http.getRequest<SignedInRequest>();
    // What stands behind the question mark is what somebody looks for: a name, a phone number.
    const url = whole.split('?')[0]!;
    // Asked every few seconds by whoever watches: one line each time, and no stack of what is no fault of the program.
    if (problem.type === 'not-ready') this.log.warn(`${method} ${url}: ${problem.message}`);
    else if (problem.status >= 500) this.log.error(`${method} ${url}${issuesOf(error)}`, loggable(error));
    if (problem.status === 403 || NOTED.includes(problem.type))
      this.security.note({
        act: 'refused',
        address: ip,
        personId: person?.id,
        tokenId: token?.id,
        how: `${method} ${url}: ${problem.type}`,
      });
    sendProblem(http.getResponse<FastifyReply>(), problem);
  }
}

/** An answer that breaks its own contract says in which field. */
function issuesOf(error: unknown): string {
  if (!(error instanceof ZodSerializationException)) return '';
  return `: ${String(error.getZodError())}`;
}

export function sendProblem(reply: FastifyReply, { status, type, message, more, headers }: ProblemError): void {
  if (reply.sent) return;
  const named = status >= 500 ? { requestId: reply.request.id } : {};
  const body: Problem = { type, title: TITLES[status] ?? 'Error', status, detail: message, ...more, ...named };
  void reply
    .code(status)
    .headers({ ...headers, 'cache-control': 'no-store' })
    .type('application/problem+json')
    .send(body);
}

/** The error as a problem: our own as it is, the framework's and the database's by their codes. */
export function problemOf(error: unknown): ProblemError {
  if (error instanceof ProblemError) return error;
  if (error instanceof PasswordsBusyError) {
    return new ProblemError(
      429,
      'busy',
      'Too many people sign in right now; try again in a few seconds.',
      {},
      {
        'retry-after': '3',
      },
    );
  }
  if (error instanceof ElsewhereAwayError)
    return new ProblemError(
      503,
      'elsewhere-away',
      'The other sign-in does not answer; use your password here, or wait.',
    );
  if (error instanceof StoreContended)
    return new ProblemError(
      503,
      'database-busy',
      'Others kept changing the same; nothing was done. Try again in a moment.',
      {},
      { 'retry-after': '1' },
    );
  const status = error instanceof HttpException ? error.getStatus() : statusOf(error);
  if (status === 404) return new ProblemError(404, 'not-found', 'There is nothing under this address.');
  if (status !== null && status < 500) return new ProblemError(status, 'bad-request', messageOf(error));
  return databaseProblem(error) ?? new ProblemError(500, 'broken', 'Something broke here; it is in the log.');
}

const UNREADABLE = /22021|22P05/;
const AWAY =
  /ECONNREFUSED|ECONNRESET|ENOTFOUND|57P01|57P03|08006|P1001|P1017|P2024|P2028|Connection terminated|not to be reached/;

function databaseProblem(error: unknown): ProblemError | null {
  const text = `${messageOf(error)} ${JSON.stringify(error, Object.getOwnPropertyNames(error ?? {})).slice(0, 4_000)}`;
  if (UNREADABLE.test(text))
    return new ProblemError(400, 'bad-input', 'The text holds a character that cannot be kept.');
  if (!AWAY.test(text)) return null;
  return new ProblemError(
    503,
    'database-away',
    'The database does not answer; try again in a moment.',
    {},
    {
      'retry-after': '5',
    },
  );
}

function statusOf(error: unknown): number | null {
  const status = (error as { statusCode?: unknown } | null)?.statusCode;
  return typeof status === 'number' ? status : null;
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : 'unknown');

export const TITLES: Readonly<Record<number, string>> = {
  400: 'Not accepted',
  401: 'Not signed in',
  403: 'Not allowed',
  404: 'Not found',
  409: 'Not now',
  412: 'Changed meanwhile',
  413: 'Too large',
  422: 'Not the same',
  428: 'Version missing',
  429: 'Too many',
  500: 'Broken',
  503: 'Away',
};
