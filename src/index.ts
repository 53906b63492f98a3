export type { Complaint, Place, Result } from './complaint.ts';
export type { Count, Interval, Joint, Pin, Tail } from './joint/joint.ts';
export { layOut } from './joint/layOut.ts';
export { dividers, gauges, glueArea } from './joint/settings.ts';
export type { HalfPins, JointKind, JointSpec, Spacing } from './joint/spec.ts';
export { tailOutline } from './joint/tailOutline.ts';
export { formatLength, formatNumber, parseLength, type Unit } from './units/length.ts';
export { type Phrase, speak } from './units/phrase.ts';
export { degrees, formatSlope, parseSlope, rise, type Slope } from './units/slope.ts';
