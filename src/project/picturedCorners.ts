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

/** Every corner of which a template can be drawn, once; equal ones of several drawers under all their names. */
export const picturedCorners = (project: Pictured): NamedPicture[] => {
  const singles = new Set(project.joints.map(({ joint }) => joint));
  const pictures = new Map<Joint, NamedPicture>();
  for (const { joint, item, stem, pinBoard } of templateCorners(project)) {
    if (pictures.has(joint)) continue;
    pictures.set(
      joint,
      singles.has(joint)
        ? { joint, name: item, file: `${stem}-boards-picture` }
        : { joint, name: `${item}: ${pinBoard.part}`, file: `${stem}-${pinBoard.part}-picture` },
    );
  }
  return [...pictures.values()];
};
