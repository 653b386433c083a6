import type { StandardEdition } from './standard-edition';

/**
 * Editions whose days are published; the first content of a shop's list. Days are as the named pages print them;
 * null where none was seen, never a guess.
 */
export const PUBLISHED_STANDARD_EDITIONS: readonly StandardEdition[] = [
  {
    standard: 'ANSI B71.3',
    edition: '2014',
    approved: '2014-08-14',
    published: '2014-09-15',
    subject: 'snow throwers',
    source: 'title pages of ANSI/OPEI B71.3-2014, read in a public preview',
  },
  {
    standard: 'ANSI B71.3',
    edition: '2005',
    approved: '2004-12-15',
    published: null,
    subject: 'snow throwers',
    source: 'title pages of ANSI B71.3-2005, read in a public preview',
  },
  {
    standard: 'ANSI B71.1',
    edition: '2003',
    approved: '2003-09-23',
    published: null,
    subject: 'walk-behind and ride-on mowers',
    source: 'title pages of ANSI B71.1-2003, read in a public preview',
  },
  {
    standard: 'ANSI B71.1',
    edition: '2017',
    approved: null,
    published: null,
    subject: 'consumer turf care equipment',
    source: 'blog.ansi.org of April 2017 speaks of it as published; the day itself was not seen',
  },
  {
    standard: 'ANSI B71.4',
    edition: '2012',
    approved: null,
    published: null,
    subject: 'commercial turf care equipment',
    source: 'catalogue of webstore.ansi.org; no day was seen',
  },
  {
    standard: 'ANSI B71.8',
    edition: '2016',
    approved: null,
    published: null,
    subject: 'powered tillers',
    source: 'catalogue of webstore.ansi.org; no day was seen',
  },
  {
    standard: '16 CFR 1205',
    edition: '1979',
    approved: null,
    published: '1979',
    subject: 'walk-behind rotary mowers; binding for machines built after 30 June 1982, the label alone after 1979',
    source: '16 CFR 1205.2 for the days it binds; the year of publication from memory',
  },
];
