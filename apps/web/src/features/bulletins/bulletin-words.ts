export const STATE_WORDS = { draft: 'Not published', published: 'Published', withdrawn: 'Withdrawn' } as const;

export const BAR_WORDS = {
  'breaks-later': 'Breaks later than it should',
  'breaks-sooner': 'Breaks sooner than it should',
  'does-not-fit': 'Does not fit',
  unsafe: 'Unsafe',
  other: 'Other',
} as const;
