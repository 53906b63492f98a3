declare const HALFPIN_VERSION: string | undefined;

/** Put in by the build; unset where the sources run as they are. */
export const VERSION = typeof HALFPIN_VERSION === 'string' ? HALFPIN_VERSION : 'unbuilt';
