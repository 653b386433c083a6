/** What every paper for an owner says before a hand goes near; the usual words of the trade. */
export const OWNERS_CAUTION =
  'Before you touch any part: stop the engine, take the key or the plug lead off, wait until everything is at rest, and release stored energy. ' +
  'Never fit a stronger fastener than the one required: it saves the pin and breaks the gearbox. ' +
  "The maker's papers, local rules and a licensed technician come first.";
