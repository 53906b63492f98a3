import type { Command } from 'commander';
import { optionName } from '../../files/failure.ts';
import { KIND_NAMES, kindFor, OWN_LENGTHS, type OwnLengthKey } from '../../joint/kinds/kinds.ts';
import { addCutterOptions, type CutterOptions } from './cutterOptions.ts';
import { FRACTIONS_OPTION, type NotationOptions } from './notationOptions.ts';

/** The lengths that only some kinds of corner have, as typed. */
export type OwnOptions = { readonly [Key in OwnLengthKey]?: string };

/** The options that describe one corner, as typed. */
export interface JointOptions extends CutterOptions, OwnOptions, NotationOptions {
  readonly name?: string;
  readonly kind?: string;
  readonly width?: string;
  readonly tailBoard?: string;
  readonly pinBoard?: string;
  readonly slope?: string;
  readonly tails?: string;
  readonly pin?: string;
  readonly pins?: string;
  readonly pitch?: string;
  readonly halfPin?: string;
  readonly graded?: string;
  readonly gradedFrom?: string;
  readonly spacing?: string;
  readonly groups?: string;
  readonly groupPin?: string;
  readonly smallPin?: string;
  readonly closer?: string;
  readonly closerTails?: string;
  readonly shoulder?: string;
  readonly shoulderWidth?: string;
  readonly mitre?: string;
  readonly proud?: string;
  readonly chisel?: string;
}

export const KINDS_IN_WORDS = KIND_NAMES.join(', ');

export const addJointOptions = (command: Command): Command => {
  command
    .optionsGroup('One corner, without a plan (lengths: 18, 18mm, 3/4in, 5-11/16in):')
    .option('--name <words>', 'what to call it')
    .option(
      '--kind <kind>',
      `${KINDS_IN_WORDS} (${kindFor([])}, unless a ${OWN_LENGTHS.map(({ word }) => word).join(' or a ')} is given)`,
    )
    .option('--width <length>', 'width of both boards')
    .option('--tail-board <length>', 'thickness of the tail board')
    .option('--pin-board <length>', 'thickness of the pin board');
  for (const { key, about } of OWN_LENGTHS) command.option(`${optionName([key])} <length>`, about);
  return addCutterOptions(
    command
      .option('--slope <slope>', '1:7, 1 in 7 or 8.1deg (1:8 unless given)')
      .option('--tails <count>', 'the number of tails, or each tail width: 20,25,20')
      .option('--pin <length>', 'pin width')
      .option('--pins <lengths>', 'with listed tails, the pins between them: 5,5')
      .option('--half-pin <length>', 'width of the half pins, or lower,upper: 6,8')
      .option('--graded <ratio>', "each tail's width as a part of its neighbour's: 0.9")
      .option('--graded-from <where>', 'edge, or middle for both ways (edge unless given)')
      .option('--spacing <how>', 'even, hounds-tooth, grouped or closer-edges (even unless given)')
      .option('--groups <counts>', 'grouped: the number of tails in each group: 2,3,2')
      .option('--group-pin <length>', 'grouped: pin width between groups (3 pins unless given)')
      .option('--small-pin <length>', 'hounds-tooth: width of the small pin in each tail (half a pin)')
      .option('--closer <ratio>', 'closer-edges: each tail nearer to the edge to its neighbour: 0.7')
      .option('--closer-tails <count>', 'closer-edges: the number of narrower tails at either edge: 2')
      .option('--pitch <length>', "a machine's spacing: from the middle of one pin to the next")
      .option('--shoulder <edge>', 'lower, upper or both: the edges that are mitred right through')
      .option('--shoulder-width <length>', 'width of what is mitred, in from the edge')
      .option('--mitre <how>', 'corner: how boards of unequal thickness meet in a mitre')
      .option('--proud <length>', 'how far the tail board is to be proud of the pins')
      .option('--chisel <length>', 'the narrowest chisel in the rack')
      .option('--units <unit>', 'mm or in: what a bare number means, and what is shown')
      .option(...FRACTIONS_OPTION),
  );
};
