import { rise, type Slope } from '../../units/slope.ts';

/**
 * How far a setting must change to take up a looseness, in mm: g / (2 s), for each of a tail's two sides moves by s for
 * every mm of the setting. Where one cutter cuts both boards, s is the tangent of its angle, and the change is of its
 * depth: deeper is tighter. Where pins are cut along a sloped template, the template moves towards their narrow ends.
 */
export const correction = (looseness: number, slope: Slope): number => looseness / (2 * rise(slope));
