import { inRoom, shares, stepOfAngles, type Share } from '../../../functions/radiation/angles.ts';

/** The averages of a pattern that is alike round the axis, over the axis, dB. */
export function averages(squareAt: (angle: number) => number): Record<string, number> {
  const mean = (of: keyof Share): number =>
    Object.values(shares)
      .flatMap((side) => side.map((share, step) => share[of] * squareAt(step * stepOfAngles)))
      .reduce((sum, each) => sum + each, 0);
  const decibels = (square: number): number => 10 * Math.log10(square);
  const [lw, er, sp] = [mean('window'), mean('early'), mean('power')];
  return {
    lw: decibels(lw),
    er: decibels(er),
    sp: decibels(sp),
    spdi: decibels(lw / sp),
    erdi: decibels(lw / er),
    pir: decibels(inRoom.window * lw + inRoom.early * er + inRoom.power * sp),
  };
}
