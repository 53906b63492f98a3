/** The note that shows a corner which belongs to no drawer. */
export const SINGLE_CORNER = /^# joints:(?:\n# {3}.*)+$/mu;

/** The note that shows a box. */
export const BOXES = /^# boxes:(?:\n# {3}.*)+$/mu;

/** Each note of the starter plan that shows keys to use. */
export const STARTER_NOTES: readonly RegExp[] = [
  /^# font: .*$/mu,
  /^ {2}# tails: \d.*$/mu,
  /^ {2}# graded: .*$/mu,
  /^ {2}# spacing: .*\n {2}# groups: .*\n {2}# groupPin: .*$/mu,
  /^ {2}# tails: \[.*\n {2}# pins: .*\n {2}# locked: .*$/mu,
  /^ {2}# joint: .*$/mu,
  /^# climate: .*$/mu,
  /^# woods:\n# {3}My wood: .*\n# {3}My other wood: .*$/mu,
  /^ {2}# slips: .*$/mu,
  /^# front: .*$/mu,
  /^# pulls: .*$/mu,
  /^# locks: .*$/mu,
  /^# stops: .*$/mu,
  /^# family: .*$/mu,
  /^# cutter: .*$/mu,
  /^ {2}# - name: .*\n {2}# {3}opening: .*$/mu,
  /^ {2}# - name: .*\n {2}# {3}opening: .*\n {2}# {3}asBuilt: .*$/mu,
  /^# saw: .*$/mu,
  /^# boards:\n(?:# {3}.*\n)+(?=# What is cut)/mu,
  /^ {2}# - name: .*\n {2}# {3}size: .*$/mu,
  BOXES,
  SINGLE_CORNER,
];

/** The plan with the # taken away from a note. */
export const withNote = (text: string, note: RegExp): string =>
  text.replace(note, (lines) => lines.replace(/# /u, '').replace(/\n( {2})?# /gu, '\n$1'));
