/** A volume of air behind a cone, with its losses and what opens it. Qs hold at `lossFrequency`, in hertz. */
export interface Chamber {
  readonly lossFrequency: number;
  readonly leakageQ: number;
  readonly absorptionQ: number;
  /** A port tuned to `lossFrequency`, or a radiator: its compliance over that of the air, resonance in hertz and Q. */
  readonly opening?:
    | { readonly kind: 'port'; readonly portQ: number }
    | { readonly kind: 'radiator'; readonly ratio: number; readonly fp: number; readonly qmp: number };
}

/** Complex ratios over a list of frequencies. */
export interface ChamberSolution {
  /** Share of the cone's volume that goes into compressing the air, Ya/Ytot: all that does not leave by leak or opening. */
  readonly airRe: Float64Array;
  readonly airIm: Float64Array;
  /** Share that goes through the opening. */
  readonly flowRe: Float64Array;
  readonly flowIm: Float64Array;
}

/** The mechanical side of a cone, which a chamber stiffens. */
interface Mechanical {
  readonly mechanicalRe: Float64Array;
  readonly mechanicalIm: Float64Array;
}

/**
 * Admittances over that of the plain air spring: air 1/(1 + P/QA), leak 1/(P·QL), port 1/(P² + P/QP). Adds its
 * stiffness F = 1/Ytot times `ratio` to the mechanical side.
 */
export function solveChamber(
  chamber: Chamber,
  at: Float64Array,
  ratio: number,
  { mechanicalRe, mechanicalIm }: Mechanical,
): ChamberSolution {
  const { lossFrequency, leakageQ, absorptionQ, opening } = chamber;
  const count = at.length;
  const airRe = new Float64Array(count);
  const airIm = new Float64Array(count);
  const flowRe = new Float64Array(count);
  const flowIm = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const f = at[index]!;
    const p = f / lossFrequency;
    const absorbed = p / absorptionQ;
    const yaRe = 1 / (1 + absorbed * absorbed);
    const yaIm = -absorbed * yaRe;
    let ventRe = 0;
    let ventIm = 0;
    if (opening?.kind === 'port') {
      const friction = p / opening.portQ;
      const size = p * p * p * p + friction * friction;
      ventRe = -(p * p) / size;
      ventIm = -friction / size;
    } else if (opening?.kind === 'radiator') {
      const r = f / opening.fp;
      const re = 1 - r * r;
      const im = r / opening.qmp;
      const scale = opening.ratio / (re * re + im * im);
      ventRe = re * scale;
      ventIm = -im * scale;
    }
    const sumRe = yaRe + ventRe;
    const sumIm = yaIm + ventIm - 1 / (p * leakageQ);
    const inverse = 1 / (sumRe * sumRe + sumIm * sumIm);
    const fRe = sumRe * inverse;
    const fIm = -sumIm * inverse;
    mechanicalRe[index] = mechanicalRe[index]! + ratio * fRe;
    mechanicalIm[index] = mechanicalIm[index]! + ratio * fIm;
    airRe[index] = yaRe * fRe - yaIm * fIm;
    airIm[index] = yaRe * fIm + yaIm * fRe;
    flowRe[index] = ventRe * fRe - ventIm * fIm;
    flowIm[index] = ventRe * fIm + ventIm * fRe;
  }
  return { airRe, airIm, flowRe, flowIm };
}
