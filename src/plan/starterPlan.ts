import type { Unit } from '../units/unit.ts';

/** The starter plan's sizes in each unit. */
interface StarterSizes {
  readonly front: string;
  readonly side: string;
  /** The thickness of a side that came out thinner. */
  readonly thinSide: string;
  readonly panel: string;
  readonly pin: string;
  readonly halfPin: string;
  readonly groupPin: string;
  readonly lap: string;
  readonly tailLap: string;
  readonly offset: string;
  readonly groove: string;
  readonly depth: string;
  readonly gap: string;
  readonly top: string;
  readonly behind: string;
  readonly drop: string;
  readonly lip: string;
  readonly chisel: string;
  readonly slip: readonly [width: string, height: string];
  readonly target: string;
  /** Diameter, length, neck, straight, bush, bush for pins. */
  readonly cutter: readonly [string, string, string, string, string, string];
  /** A pair together, the bar, both channels, and how far spacers may differ that are told as one. */
  readonly fingers: readonly [string, string, string, string, string];
  readonly halfPins: string;
  /** Clear width and height, a rail, and a drawer's width where it is given. */
  readonly cabinet: readonly [string, string, string, string];
  /** Width of its rails, a tenon, width of runners, height of guides, what sides leave to guides, and the vent. */
  readonly frame: readonly [string, string, string, string, string, string];
  /** Width behind, and both diagonals in front, of the narrow opening as measured. */
  readonly measured: readonly [string, string];
  /** Thickness of boards for fronts and for sides; length, and width at the left and at the right. */
  readonly front2: string;
  readonly ash: string;
  readonly board: readonly [string, string, string];
  /** Length of a check, a knot's place and extent. */
  readonly defect: readonly [string, string, string, string];
  /** Diameter of a hole, spacing of two, and how wide and high a pull is. */
  readonly pull: readonly [hole: string, spacing: string, width: string, height: string];
  /** To the pin, keyhole, width, height and depth of the body. */
  readonly lock: readonly [string, string, string, string, string];
  /** Width, thickness, depth. */
  readonly stop: readonly [string, string, string];
  /** Kerf, edge, ends, face, and the least offcut. */
  readonly saw: readonly [string, string, string, string, string, string];
  readonly narrow: readonly [width: string, height: string, depth: string];
  readonly wide: readonly [width: string, height: string, depth: string];
  readonly lid: readonly [height: string, kerf: string];
  readonly carcase: readonly [width: string, thickness: string, pin: string];
  readonly rail: string;
  readonly listed: readonly [tail: string, pin: string];
}

const SIZES: Readonly<Record<Unit, StarterSizes>> = {
  mm: {
    front: '20',
    side: '11',
    thinSide: '10.6',
    panel: '5',
    pin: '5',
    halfPin: '6',
    groupPin: '15',
    lap: '5',
    tailLap: '3',
    offset: '11',
    groove: '5',
    depth: '5',
    gap: '0.5',
    top: '1',
    behind: '12',
    drop: '4',
    lip: '6',
    chisel: '3',
    slip: ['10', '18'],
    target: '18',
    cutter: ['12.7', '20', '7', '8', '16', '11'],
    fingers: ['15', '600', '30', '26', '0.1'],
    halfPins: '4, 9',
    measured: ['279.5', '290'],
    cabinet: ['574', '240', '18', '200'],
    frame: ['60', '10', '30', '20', '12', '6'],
    front2: '26',
    ash: '16',
    board: ['2150', '190', '205'],
    defect: ['80', '640', '80', '45'],
    pull: ['5', '64', '78', '14'],
    lock: ['20', '6', '50', '32', '10'],
    stop: ['40', '6', '25'],
    saw: ['3', '3', '25', '1', '300', '50'],
    narrow: ['280', '76', '420'],
    wide: ['574', '146', '420'],
    lid: ['28', '1.5'],
    carcase: ['430', '19', '10'],
    rail: '60',
    listed: ['20', '6'],
  },
  in: {
    front: '13/16',
    side: '7/16',
    thinSide: '27/64',
    panel: '1/4',
    pin: '1/4',
    halfPin: '1/4',
    groupPin: '1/2',
    lap: '3/16',
    tailLap: '1/8',
    offset: '7/16',
    groove: '1/4',
    depth: '3/16',
    gap: '1/64',
    top: '1/32',
    behind: '1/2',
    drop: '5/32',
    lip: '1/4',
    chisel: '1/8',
    slip: ['3/8', '3/4'],
    target: '3/4',
    cutter: ['1/2', '13/16', '1/4', '5/16', '5/8', '7/16'],
    fingers: ['5/8', '24', '1 1/4', '1', '0.1mm'],
    halfPins: '3/16, 3/8',
    measured: ['10 63/64', '11 13/32'],
    cabinet: ['22 1/2', '9 1/2', '3/4', '8'],
    frame: ['2 1/2', '3/8', '1 1/4', '3/4', '1/2', '1/4'],
    front2: '1',
    ash: '5/8',
    board: ['84', '7 1/2', '8'],
    defect: ['3', '25', '3', '1 3/4'],
    pull: ['3/16', '2 1/2', '3', '9/16'],
    lock: ['3/4', '1/4', '2', '1 1/4', '3/8'],
    stop: ['1 1/2', '1/4', '1'],
    saw: ['1/8', '1/8', '1', '1/32', '12', '2'],
    narrow: ['11', '3', '16 1/2'],
    wide: ['22 1/2', '5 3/4', '16 1/2'],
    lid: ['1 1/8', '1/16'],
    carcase: ['17', '3/4', '3/8'],
    rail: '2 1/2',
    listed: ['3/4', '1/4'],
  },
};

const UNITS_MM = 'units: mm ## mm; or in, and beside it fractions: 64, 32, 16 or decimal';
const UNITS_IN = `units: in ## mm or in
fractions: 64 ## to what lengths are shown: the nearest 1/64, 32 or 16, or decimal, to .001`;

/** Notes at the ends of lines begin in one column where the lines leave room for it. */
const align = (text: string): string =>
  text.replace(/^(.+?) +## /gmu, (_, code: string) => `${code.padEnd(20)}  # `);

/**
 * A plan to start from: small, valid, with a note on every key.
 * @example
 * ```ts
 * console.log(readProject(starterPlan('mm')).ok); // true
 * ```
 */
export const starterPlan = (unit: Unit): string => {
  const s = SIZES[unit];
  return align(`# A plan of dovetailed drawers. Lines that begin with # are notes: remove the # to use what they show.
# A bare number is in the plan's units; any length may also be written 18mm, 0.75in, 3/4in or "5 11/16in".

name: My chest ## printed on every sheet
# font: my-font.ttf ## a font file beside this plan, for letters of names that the font of the sheets lacks
${unit === 'mm' ? UNITS_MM : UNITS_IN}

# What the parts are made of. Only the thickness of the fronts and of the sides must be given:
# backs are as thick as the sides, and bottoms as the groove is wide.
# grain: how the boards were sawn from the log, flatsawn (growth rings roughly parallel to the face) or quartersawn.
stock:
  front:  {thickness: ${s.front}, species: "Cherry, black", grain: flatsawn}
  side:   {thickness: ${s.side}, species: "Ash, white"}
  back:   {thickness: ${s.side}, species: "Ash, white"}
  bottom: {thickness: ${s.panel}}

# The front corners; for single corners see the end.
joint:
  kind: lapped ## lapped, hidden at the front; through; double-lapped, hidden but for a strip; or secret-mitred
  slope: "1:7" ## also "1 in 7" or "8.13deg"; in quotes
  pin: ${s.pin} ## the pin width
  halfPin: ${s.halfPin} ## the half pins; [lower, upper] where they differ
  lap: ${s.lap} ## the wood left in front of the tails
  # tailLap: ${s.tailLap} ## of a double-lapped or secret-mitred joint: the wood left on the sides, outside the pins
  # shoulder: lower ## an edge that is mitred right through, where a groove would show: lower, upper or both
  # shoulderWidth: ${s.lap} ## in from the edge; unless given, what covers the groove, or as wide as the lap
  # mitre: corner ## where its boards differ in thickness: from the inside corner to the outside corner
  chisel: ${s.chisel} ## the narrowest chisel in the rack
  proud: 0 ## how far the sides are proud of the pins, to be planed flush
  # tails: 4 ## their number; chosen for the look of the whole set unless given
  # graded: {ratio: 0.9, from: edge} ## each tail width 0.9 of the one below it; from: middle, from the middle out
  # spacing: grouped ## even, grouped, hounds-tooth (see back), or closer-edges (see the end); tails graded from: middle narrow to both edges
  # groups: [1, 2] ## the number of tails in each group, from the reference edge up
  # groupPin: ${s.groupPin} ## the pin width between groups
  # tails: [${s.listed[0]}, ${s.listed[0]}] ## or each tail width, from the reference edge up,
  # pins: [${s.listed[1]}] ## and the pins between them;
  # locked: [tail 1] ## those that stay as they are while others are changed on the page

# The groove for the bottom, in the front and the sides.
groove:
  offset: ${s.offset} ## from the reference edge to the groove
  width: ${s.groove}
  depth: ${s.depth}
  # Where the sides' groove begins, from their front ends, so that through joints do not show it; or a length.
  # stopped: auto

# The clearance between a drawer and its opening; top: auto is what the climate below needs.
fit: {side: ${s.gap}, top: ${s.top}, behind: ${s.behind}}

# The air in the workshop, and where the drawers are kept when that is driest and dampest; also 70F/45%, or 8% as a
# moisture meter says. Every size is that of wood as damp as it is when made: on a damper or a drier day, change this.
# climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}

# Woods of your own, by their shrinkage in percent, or by how much they move for 1 % of moisture content.
# woods:
#   My wood: {shrinkage: {radial: 3.7, tangential: 7.1}}
#   My other wood: {coefficient: {radial: 0.00126, tangential: 0.00248}}

back:
  drop: ${s.drop} ## how far the back's upper edge is below the sides'
  # The back corners, where they differ from the front's: any key of joint but kind and lap. A hound's tooth has a
  # small pin in the middle of each tail of a through joint.
  # joint: {pin: ${s.pin}, tails: 2, spacing: hounds-tooth, smallPin: ${s.chisel}}

bottom:
  kind: panel ## a panel that does not move, or solid wood
  slack: ${s.gap} ## of the bottom in its groove, at each side
  # Drawer slips, strips glued inside the sides to carry the groove; slips: none for a drawer without.
  # slips: {width: ${s.slip[0]}, height: ${s.slip[1]}}

# The lip: how far fronts extend over their openings' edges; {sides: ${s.lip}, top: ${s.lip}, bottom: 0} where it differs.
# front: {lip: ${s.lip}}

# Pulls: 1 in the middle or 2, so far from the front's ends, and above the middle of its height (a length, or a share such as
# 4%); the holes of each, and how large it is seen from the front. In a cabinet, lineUpWith: Pencils, in place of fromEnds, puts
# them over or under the pulls of that drawer's row. A lock is let into the inside face at the upper edge: pin is how far down the
# keyhole is, body what is let in. Stops are fixed to the rail behind the front. number: 0 for a drawer without them.
# pulls: {number: 2, fromEnds: 25%, above: 4%, holes: {diameter: ${s.pull[0]}, spacing: ${s.pull[1]}}, size: {width: ${s.pull[2]}, height: ${s.pull[3]}}}
# locks: {number: 1, pin: ${s.lock[0]}, keyhole: ${s.lock[1]}, body: {width: ${s.lock[2]}, height: ${s.lock[3]}, depth: ${s.lock[4]}}}
# stops: {number: 2, fromSides: 20%, width: ${s.stop[0]}, thickness: ${s.stop[1]}, depth: ${s.stop[2]}, behind: ${s.front}}

# The set's tail width, which all drawers are matched to; found from the set unless given.
# family: {target: ${s.target}}

# A dovetail cutter in a router, for every corner: its angle, in degrees, sets the slope, its diameter the least pin.
# straight is the straight cutter for through pins; bush, pinBush: the guide bushes' outside diameters, for guides to make.
# cutter: {diameter: ${s.cutter[0]}, angle: 8, length: ${s.cutter[1]}, neck: ${s.cutter[2]}, straight: ${s.cutter[3]}, bush: ${s.cutter[4]}, pinBush: ${s.cutter[5]}}

# Fingers that slide along a bar in pairs, one pair for each tail: together is a pair's width pushed together, bush that of
# the guide bush between the pairs, if it is not the cutter's. The quantity of pairs, and the bar, are checked if given;
# lapped and through are other ends of the same fingers, by the channel of a pair pushed together.
# fingers: {together: ${s.fingers[0]}, bush: ${s.cutter[4]}, pairs: 10, bar: ${s.fingers[1]}, lapped: {channel: ${s.fingers[2]}}, through: {channel: ${s.fingers[3]}, taper: 8}}
# spacers: the most different spacers that the fronts may need; half pins then move, from the least to the most, for few.
# family: {spacers: 2, within: ${s.fingers[4]}, halfPins: [${s.halfPins}]}

# Openings may follow from a cabinet instead, by its clear size inside; each drawer is then named in the rows, from the top, once
# for every place, and has no opening of its own: cabinet: {width: ${s.cabinet[0]}, height: ${s.cabinet[1]}, depth: ${s.narrow[2]}, rail: ${s.cabinet[2]}, divider: ${s.cabinet[2]},
# rows: [[Pencils, Pencils], Letters]}. A place may be {name: Pencils, width: ${s.cabinet[3]}}, or rows of its own: {rows: [Pencils, Pencils]}.
# heights: equal, or a list such as [${s.narrow[1]}, auto], or {progression: arithmetic, first: ${s.narrow[1]}}: with first: the top row's height,
# step: from row to row, ratio: in place of step where it is geometric, or overall: bottom row over top row.
# What carries the drawers there: rails: {width: ${s.frame[0]}, top: ${s.cabinet[2]}, bottom: ${s.cabinet[2]}, tenon: ${s.frame[1]}, species: "Ash, white"} (width from front to back; top, bottom:
# thickness of a rail over and under all rows, if there is one), dividers: full (from front to back; short unless given),
# runners: {width: ${s.frame[2]}, species: "Ash, white"} (kickers too), guides: {height: ${s.frame[3]}, sides: ${s.frame[4]}} (sides: how far the cabinet's sides lie outside the openings),
# vent: ${s.frame[5]} (what frame and drawers leave free before the cabinet's back).

# What is lost between boards and parts: in a saw cut, left on each long edge to plane, cut off each end of a board, planed
# off each face; and the least offcut worth keeping, its length and width.
# saw: {kerf: ${s.saw[0]}, edge: ${s.saw[1]}, ends: ${s.saw[2]}, face: ${s.saw[3]}, keep: [${s.saw[4]}, ${s.saw[5]}]}

# The boards at hand, as they lie with the show face up: stock is what comes out of each (front, side, back, bottom; slips are
# sawn from what is for sides), thickness as bought. Lengths are from the left end, widths from the lower edge; width: [left,
# right] where it differs at the ends; outline in place of both; size is length x width x quantity (or count) of a merchant's
# list. A defect's at is its middle, size its extent. clean: an end that is cut already; bow: long or cup; keep: true spares a
# board; figure is the end at which fronts begin. halfpin breakout says which part comes out of which board.
# boards:
#   - {name: Cherry 1, stock: front, thickness: ${s.front2}, length: ${s.board[0]}, width: [${s.board[1]}, ${s.board[2]}], clean: left, figure: left,
#      defects: [{kind: check, from: right, length: ${s.defect[0]}}, {kind: knot, sound: true, at: [${s.defect[1]}, ${s.defect[2]}], size: [${s.defect[3]}, ${s.defect[3]}]}]}
#   - {name: Ash 1, stock: [side, back], thickness: ${s.ash}, size: ${s.board[0]} x ${s.board[1]} x 3}
#   - {name: Ash 2, stock: [side, back], thickness: ${s.ash}, outline: [[0, 0], [${s.board[0]}, 0], [${s.board[0]}, ${s.board[1]}], [0, ${s.board[2]}]], count: 2, bow: cup, keep: true}
# What is cut stays cut: on a board, what halfpin breakout --json printed of it, as far as it has been sawn.
#      cut: {cuts: [{kind: crosscut, piece: 0, at: 25}], blanks: [{drawer: Pencils, part: front, index: 1, strip: 1, spare: true, turned: false, x: 28, y: 0, length: 315, width: 81, piece: 2, letter: E, why: …}]}
# Defects that parts may have away from joints and grooves (knot: sound or loose), fronts whose figure runs on from one to the
# next (a row from left to right, or a stack from the bottom up; runThrough: rows or stacks, all of a cabinet), and second tries of each size.
# breakout: {allow: {side: [sapwood], back: [sapwood, knot], bottom: [sound knot]}, runThrough: [[Pencils, Pencils], {stack: [Letters]}], spare: {front: 1},
# pinned: [{part: Letters left side 1, board: Ash 1 no. 2, at: [${s.defect[1]}, ${s.defect[3]}], turned: true}]}
# A part that is pinned, by its name as breakout prints it, comes out of that board, the lower left corner of its blank at that place
# if one is given; turned: half a turn round, across: a panel's length across the board. The rest is fitted round it.

# Each kind of drawer. What is given above for all drawers may be given for one drawer too, as for Letters.
drawers:
  - name: Pencils
    count: 2 ## equal ones to make
    opening: {width: ${s.narrow[0]}, height: ${s.narrow[1]}, depth: ${s.narrow[2]}}
  - name: Letters
    opening: {width: ${s.wide[0]}, height: ${s.wide[1]}, depth: ${s.wide[2]}}
    joint: {tails: 5}
  # An opening that is there already, as it was measured: rising is the diagonal from the lower left corner, falling from the upper left.
  # - name: Found place
  #   opening: {width: {front: ${s.narrow[0]}, back: ${s.measured[0]}}, height: {left: ${s.narrow[1]}, right: ${s.narrow[1]}}, diagonals: {rising: ${s.measured[1]}, falling: ${s.measured[1]}}, depth: ${s.narrow[2]}}
  # Boards that came out other than planned: their thickness, width or length; index says which of several equal drawers they are of.
  # - name: Thin side
  #   opening: {width: ${s.narrow[0]}, height: ${s.narrow[1]}, depth: ${s.narrow[2]}}
  #   asBuilt: [{part: side, hand: left, thickness: ${s.thinSide}}]
  # A drawer may be given by its outside size, lip included, in place of an opening.
  # - name: Loose tray
  #   size: {width: ${s.narrow[0]}, height: ${s.narrow[1]}, depth: ${s.narrow[2]}}

# Boxes: all four corners alike, and grooves on all four sides hold the bottom. What stock, groove, bottom and joint say above
# holds here unless given, but for the kind and the spacing of the tails, and where the grooves are stopped.
# boxes:
#   - name: Stamps
#     count: 2
#     size: {width: ${s.narrow[0]}, height: ${s.narrow[1]}, depth: ${s.narrow[0]}} ## outside; the height with the lid, but without a top laid on its edges
#     kind: through ## at all four corners; or another kind
#     stock: {front: {thickness: ${s.side}}} ## of the back too; and of the sides, where none is given above
#     bottom: {hold: groove} ## or rebate, along the lower edges
#     lid: {height: ${s.lid[0]}, kerf: ${s.lid[1]}} ## sawn off when it is glued up; or made: apart

# Corners that belong to no drawer. Any key of joint may be given too; what joint says above holds here unless given, but
# for the kind and the spacing of the tails (tails, pins, locked, graded, spacing and its keys).
# joints:
#   - name: Carcase
#     kind: through
#     width: ${s.carcase[0]} ## of both boards
#     tailBoard: ${s.carcase[1]} ## thickness of the board that carries the tails
#     pinBoard: ${s.carcase[1]} ## thickness of the board that carries the pins
#     spacing: closer-edges ## narrower tails towards both edges, where a wide board cups
#     closer: 0.7 ## each narrower tail width 0.7 of its inner neighbour's
#     closerTails: 2 ## the number of narrower tails at either edge
#     tails: 9
#     pin: ${s.carcase[2]} ## wider than the drawers', as the boards are thicker
#     halfPin: ${s.carcase[2]}
#   - name: Top rail
#     kind: lapped
#     width: ${s.rail} ## of the rail, from front to back
#     tailBoard: ${s.carcase[1]} ## thickness of the rail
#     pinBoard: ${s.carcase[1]} ## thickness of the sides
#     halfPin: ${s.carcase[2]} ## in front of the rail's tails, and behind them
#     rail: {between: ${s.cabinet[0]}, sideWidth: ${s.carcase[0]}, setBack: 0} ## a rail over the drawers, let down into the sides' top ends
`);
};
