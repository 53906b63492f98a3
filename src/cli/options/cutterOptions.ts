import type { Command } from 'commander';

/** The options that describe what a corner is cut with, as typed. */
export interface CutterOptions {
  readonly cutterDiameter?: string;
  readonly cutterAngle?: string;
  readonly cutterLength?: string;
  readonly cutterNeck?: string;
  readonly straight?: string;
  readonly bush?: string;
  readonly pinBush?: string;
  readonly fingersTogether?: string;
  readonly fingersBush?: string;
  readonly fingersPairs?: string;
  readonly fingersBar?: string;
}

export const addCutterOptions = (command: Command): Command =>
  command
    .optionsGroup('A dovetail cutter in a router, that the corner is set out for:')
    .option('--cutter-diameter <length>', 'of the dovetail cutter at its end, where it is widest')
    .option('--cutter-angle <degrees>', 'of its side to its axis, in degrees: 8 cuts 1:7.12, 14 cuts 1:4.01')
    .option('--cutter-length <length>', 'how far up its side it cuts')
    .option('--cutter-neck <length>', 'its diameter above the cutting length')
    .option('--straight <length>', 'diameter of the straight cutter for through pins')
    .option('--bush <length>', 'outside diameter of the guide bush, for guides to make')
    .option('--pin-bush <length>', 'outside diameter of the guide bush for the straight cutter, if different')
    .option('--fingers-together <length>', 'fingers that slide on a bar: width of a pair pushed together')
    .option(
      '--fingers-bush <length>',
      'outside diameter of the guide bush between them (--bush unless given)',
    )
    .option('--fingers-pairs <count>', 'quantity of pairs, one for each tail')
    .option('--fingers-bar <length>', "the most from the first pair's outer edge to the last's");
