import { Problem } from '../values/problem.ts';
import { insideOf, type Outside } from './inside.ts';

/** Panels of one kind and size, edges in metres. */
export interface Part {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  /** What is cut out of each, as a share of its face. */
  readonly open: number;
}

/** Which panels run to the outside and which stand between them. */
export const joints = ['front covers', 'sides cover', 'mitred'] as const;

export interface Cabinet extends Outside {
  readonly joint: string;
  readonly braces: number;
  /** Share of a brace that is left standing. */
  readonly solid: number;
}

/** The panels of one cabinet. Mitred panels are given by their long side. */
export function partsOf(cabinet: Cabinet): readonly Part[] | Problem {
  const inside = insideOf(cabinet);
  if (inside instanceof Problem) return inside;
  const { height, width, depth } = cabinet;
  const pair = (name: string, length: number, breadth: number): Part => ({
    name,
    count: 2,
    length,
    width: breadth,
    open: 0,
  });
  const shell: Record<string, readonly Part[]> = {
    'front covers': [
      pair('Front and back', height, width),
      pair('Side', height, inside.depth),
      pair('Top and bottom', inside.width, inside.depth),
    ],
    'sides cover': [
      pair('Side', height, depth),
      pair('Top and bottom', inside.width, depth),
      pair('Front and back', inside.height, inside.width),
    ],
    mitred: [
      pair('Side', height, depth),
      pair('Top and bottom', width, depth),
      pair('Front and back', inside.height, inside.width),
    ],
  };
  const brace: Part = {
    name: 'Brace',
    count: cabinet.braces,
    length: inside.width,
    width: inside.depth,
    open: 1 - cabinet.solid,
  };
  return [...(shell[cabinet.joint] ?? []), ...(cabinet.braces > 0 ? [brace] : [])];
}

/** Volume of the panels as glued up: outside less inside, and the braces. It does not depend on the joints. */
export function materialOf(cabinet: Cabinet): number | Problem {
  const inside = insideOf(cabinet);
  if (inside instanceof Problem) return inside;
  const shell = cabinet.height * cabinet.width * cabinet.depth - inside.height * inside.width * inside.depth;
  return shell + inside.width * inside.depth * cabinet.thickness * cabinet.solid * cabinet.braces;
}
