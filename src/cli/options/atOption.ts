import type { Complaint } from '../../units/complaint.ts';

/** Options that stand in for others where they are given. */
export interface Instead {
  readonly pitch?: number | undefined;
  readonly tight?: string | undefined;
  readonly shy?: string | undefined;
}

/** A complaint of a corner, its cutter or its trial joint, at the option that can put it right. */
export const atOption = (complaint: Complaint, { pitch, tight, shy }: Instead = {}): Complaint => {
  const [group, ...within] = complaint.at;
  if (group === 'fingers') {
    const [own = 'together', ...deeper] = within.map(String);
    return { ...complaint, at: [`fingers${own.charAt(0).toUpperCase()}${own.slice(1)}`, ...deeper] };
  }
  const [key, ...rest] = group === 'cutter' && within.length > 0 ? within : complaint.at;
  const at = (option: string): Complaint => ({ ...complaint, at: [option, ...rest] });
  switch (key) {
    case 'diameter':
      return at('cutterDiameter');
    case 'angle':
      return at('cutterAngle');
    case 'length':
      return at('cutterLength');
    case 'neck':
      return at('cutterNeck');
    case 'tails':
    case 'pins':
    case 'halfPin':
      // With a pitch there is no other option for these.
      return at(pitch === undefined ? key : 'pitch');
    case 'looseness':
      return at(tight === undefined ? 'loose' : 'tight');
    case 'proud':
      return at(shy === undefined ? key : 'shy');
    default:
      return at(String(key ?? ''));
  }
};
