import type { paths } from './api-types';

/**
 * The routes of the API as the compiler checks requests by them: which address takes which method, what must be sent
 * with it, what is answered. All of it is worked out from the types that are generated from the API's description.
 */
export type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

type Operation<K extends keyof paths, M extends Method> = NonNullable<paths[K][Lowercase<M>]>;

type Filled<K extends string, Params> = K extends `${infer Before}{${infer Name}}${infer After}`
  ? `${Before}${Name extends keyof Params ? (Params[Name] extends number ? number : string) : string}${Filled<After, Params>}`
  : K;

type ParamsOf<O> = O extends { parameters: { path: infer P } } ? P : never;

/** Addresses that take the method, with their parameters filled in. */
export type Address<M extends Method> = {
  [K in keyof paths]: [Operation<K, M>] extends [never] ? never : Filled<K, ParamsOf<Operation<K, M>>>;
}[keyof paths];

/** The operation behind an address and a method. */
type At<M extends Method, P> = {
  [K in keyof paths]: [Operation<K, M>] extends [never]
    ? never
    : P extends Filled<K, ParamsOf<Operation<K, M>>>
      ? Operation<K, M>
      : never;
}[keyof paths];

type BodyOf<O> = O extends { requestBody: { content: { 'application/json': infer B } } }
  ? { body: B }
  : { body?: undefined };

type VersionOf<O> = O extends { parameters: { header: { 'If-Match': string } } }
  ? { version: number }
  : { version?: undefined };

type QueryOf<O> = O extends { parameters: { query?: infer Q } }
  ? { query?: { [N in keyof Q]?: Q[N] | '' | (NonNullable<Q[N]> extends number ? string : never) } }
  : { query?: undefined };

/** What is sent with a request: its body, the version the change was made on, its query. */
export type Sent<M extends Method, P> = SentTo<At<M, P>>;
// One operation at a time: the product of all bodies, versions and queries is more than the compiler will look at.
type SentTo<O> = O extends unknown ? BodyOf<O> & VersionOf<O> & QueryOf<O> : never;

/** The arguments after the address: none are needed where nothing must be sent. */
export type SentArguments<M extends Method, P> = object extends Sent<M, P> ? [sent?: Sent<M, P>] : [sent: Sent<M, P>];

/** One change below an address such as `/tickets/{id}`: its method, the rest of its path, and the body it takes. */
export type ActBelow<Base extends string, M extends Method = 'POST' | 'PUT' | 'PATCH' | 'DELETE'> = {
  [K in keyof paths]: K extends `${Base}${infer Rest}`
    ? { [V in M]: [Operation<K, V>] extends [never] ? never : Act<V, Rest, Operation<K, V>> }[M]
    : never;
}[keyof paths];

type Act<V extends Method, Rest extends string, O> = BodyOf<O> & { method: V; path: Filled<Rest, ParamsOf<O>> };
