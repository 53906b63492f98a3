import { must } from './abuse.ts';

/** What Windows forbids in file names, and names its devices by (Microsoft, Naming Files, Paths, and Namespaces). */
const FORBIDDEN = /[<>:"/\\|?*\p{Cc}]/u;
const DEVICE = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)/iu;
/** NAME_MAX of Linux file systems and of APFS, in bytes. */
const LONGEST = 255;

/** A file's name that Windows, macOS and Linux all accept, and that means nothing to a shell or a terminal. */
export const mustBeSafeFileName = (name: string): void => {
  must(!FORBIDDEN.test(name), `forbidden characters in ${JSON.stringify(name)}`);
  must(!DEVICE.test(name), `${name} is a device`);
  must(
    !/^[.\s-]|[.\s]$/u.test(name),
    `${JSON.stringify(name)} begins or ends in what systems take for something else`,
  );
  must(!/\p{Cf}|\p{Cs}|\p{Zl}|\p{Zp}/u.test(name), `unseen characters in ${JSON.stringify(name)}`);
  must(name === name.normalize('NFC'), `${name} is written differently on macOS`);
  must(new TextEncoder().encode(name).length <= LONGEST, `${name} is too long`);
};
