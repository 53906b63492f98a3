import type { Joint } from './joint.ts';

/** The mean tip width of a joint's tails. */
export const meanTail = ({ tails }: Joint): number =>
  tails.reduce((sum, { tip }) => sum + tip[1] - tip[0], 0) / tails.length;

/** The mean narrow width of its whole pins; of its half pins where one tail leaves no whole one. */
export const meanPin = ({ pins }: Joint): number => {
  const whole = pins.filter(({ half }) => !half);
  const counted = whole.length > 0 ? whole : pins;
  return counted.reduce((sum, { narrow }) => sum + narrow[1] - narrow[0], 0) / counted.length;
};
