/** A screen to look at: its name, its address, and what to do there before the picture is taken. */
export interface Screen {
  readonly name: string;
  /** Text that stands on the page once it is ready. */
  readonly ready: string | RegExp;
  readonly path: string;
  /** Clicks, by their accessible name, before the picture. */
  readonly press?: readonly string[];
}

/** Rows of the demo shop that show a screen at its fullest. */
export interface Rows {
  readonly ticket: number;
  readonly draft: number;
  readonly line: string;
}

/** Every screen of the page, in the order a shop meets them. */
export function screens({ ticket, draft, line }: Rows): readonly Screen[] {
  return [
    { name: 'board', path: '/', ready: 'Intake' },
    { name: 'benches', path: '/benches', ready: 'No bench yet' },
    { name: 'my-bench', path: '/my-bench', ready: 'The bench I work at' },
    { name: 'ticket', path: `/tickets/${ticket}`, ready: 'The places' },
    { name: 'sheet', path: `/tickets/${ticket}/sheet`, ready: 'What was found' },
    { name: 'new-ticket', path: '/new-ticket', ready: /owner/i },
    { name: 'unit', path: '/units/7', ready: 'Evidence so far' },
    { name: 'trail', path: '/units/7/trail', ready: /of the trail|Nothing is written down yet/ },
    { name: 'owner', path: '/owners/7', ready: 'Machines' },
    { name: 'search', path: '/search?q=pin', ready: 'pin' },
    { name: 'which-part', path: '/which-part', ready: /line/i },
    { name: 'wall-chart', path: `/wall-chart/${line}`, ready: /papers/i },
    { name: 'rulebook', path: `/rulebook?line=${line}`, ready: 'is required' },
    { name: 'findings', path: '/rulebook/findings', ready: 'good to know' },
    { name: 'bulletins', path: '/bulletins', ready: 'Not published' },
    { name: 'bulletin', path: `/bulletins/${draft}`, ready: 'Publish' },
    { name: 'bulletin-editor', path: `/bulletins/${draft}/edit`, ready: 'Positions' },
    { name: 'flagged', path: '/flagged', ready: /wait/i },
    { name: 'callbacks', path: '/callbacks', ready: 'To call' },
    { name: 'figures', path: '/figures', ready: 'Time in stage' },
    { name: 'shelf', path: '/shelf', ready: 'On hand' },
    { name: 'shelf-orders', path: '/shelf/orders', ready: 'The list as CSV' },
    { name: 'tag', path: `/tickets/${ticket}/tag`, ready: /promised/i },
    { name: 'shop', path: '/shop', ready: /scheme/i },
    { name: 'my-sign-in', path: '/my-sign-in', ready: 'Second factor' },
    { name: 'in-and-out', path: '/shop/in-and-out', ready: /bring a spreadsheet in/i },
    { name: 'parts', path: '/shop/parts', ready: 'Parts and their bar codes' },
    { name: 'programs', path: '/shop/programs', ready: 'Other programs' },
    { name: 'settings', path: '/shop/settings', ready: /months/i },
  ];
}
