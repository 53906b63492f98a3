import type { Joint } from '../joint/joint.ts';
import type { PicturedCorner } from '../sheets/corners/cornerSheets.ts';
import { templateCorners } from './piecesOf.ts';
import type { Project } from './project.ts';

/** The part of a project that pictures of its corners depend on. */
type Pictured = Pick<Project, 'set' | 'joints' | 'units' | 'only'>;

export interface NamedPicture extends PicturedCorner {
  /** The name of its file, without the ending. */
  readonly file: string;
}

/**
 * Every corner of which a template can be drawn, once; equal ones of several drawers under all their names. One that differs from
 * that at the board's other end is named by its letter too.
 */
export const picturedCorners = (project: Pictured): NamedPicture[] => {
  const singles = new Set(project.joints.map(({ joint }) => joint));
  const corners = templateCorners(project);
  const atBoth = new Map<string, Set<Joint>>();
  for (const { joint, stem, pinBoard } of corners) {
    const key = `${stem}-${pinBoard.part}`;
    atBoth.set(key, (atBoth.get(key) ?? new Set()).add(joint));
  }
  const pictures = new Map<Joint, NamedPicture>();
  for (const { joint, item, stem, pinBoard, letter } of corners) {
    if (pictures.has(joint)) continue;
    const file = `${stem}-${pinBoard.part}`;
    const isAlone = (atBoth.get(file)?.size ?? 0) > 1;
    pictures.set(
      joint,
      singles.has(joint)
        ? { joint, name: item, file: `${stem}-boards-picture` }
        : {
            joint,
            name: `${item}: ${pinBoard.part}${isAlone ? `, corner ${letter}` : ''}`,
            file: `${file}${isAlone ? `-${letter.toLowerCase()}` : ''}-picture`,
          },
    );
  }
  return [...pictures.values()];
};
