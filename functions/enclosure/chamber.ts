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

/** Complex values over a list of frequencies, to be filled. */
export interface LoadArrays {
  /** Mechanical side of a cone, which a chamber stiffens. */
  readonly mechanicalRe: Float64Array;
  readonly mechanicalIm: Float64Array;
  /** Share of the cone's volume that goes into compressing the air, Ya/Ytot: all that does not leave by leak or opening. */
  readonly airRe: Float64Array;
  readonly airIm: Float64Array;
  /** Share that goes through the opening. */
  readonly flowRe: Float64Array;
  readonly flowIm: Float64Array;
}

/**
 * Admittances over that of the plain air spring: air 1/(1 + P/QA), leak 1/(P·QL), port 1/(P² + P/QP). Adds its
 * stiffness F = 1/Ytot times `ratio` to the mechanical side.
 */
export function solveChamber(
  chamber: Chamber,
  at: Float64Array,
  ratio: number,
  { mechanicalRe, mechanicalIm, airRe, airIm, flowRe, flowIm }: LoadArrays,
): void {
  const { lossFrequency, leakageQ, absorptionQ, opening } = chamber;
  const count = at.length;
  const port = opening?.kind === 'port' ? opening : undefined;
  const radiator = opening?.kind === 'radiator' ? opening : undefined;
  // Divisions are dear in this loop: what can be turned over before it is.
  const perLoss = 1 / lossFrequency;
  const perAbsorption = 1 / absorptionQ;
  const perLeakage = 1 / leakageQ;
  if (port?.portQ === Infinity && perAbsorption === 0) {
    // The usual vented box, by two divisions instead of four.
    for (let index = 0; index < count; index += 1) {
      const perP = lossFrequency / at[index]!;
      const vent = -perP * perP;
      const sumRe = 1 + vent;
      const sumIm = -perP * perLeakage;
      const inverse = 1 / (sumRe * sumRe + sumIm * sumIm);
      const fRe = sumRe * inverse;
      const fIm = -sumIm * inverse;
      mechanicalRe[index] = mechanicalRe[index]! + ratio * fRe;
      mechanicalIm[index] = mechanicalIm[index]! + ratio * fIm;
      airRe[index] = fRe;
      airIm[index] = fIm;
      flowRe[index] = vent * fRe;
      flowIm[index] = vent * fIm;
    }
    return;
  }
  const perPort = port === undefined ? 0 : 1 / port.portQ;
  for (let index = 0; index < count; index += 1) {
    const f = at[index]!;
    const p = f * perLoss;
    const perP = lossFrequency / f;
    const absorbed = p * perAbsorption;
    const yaRe = 1 / (1 + absorbed * absorbed);
    const yaIm = -absorbed * yaRe;
    let ventRe = 0;
    let ventIm = 0;
    if (port !== undefined) {
      // 1/(P² + P/QP) = 1/(P·(P + 1/QP)).
      const scale = perP / (p * p + perPort * perPort);
      ventRe = -p * scale;
      ventIm = -perPort * scale;
    } else if (radiator !== undefined) {
      const r = f / radiator.fp;
      const re = 1 - r * r;
      const im = r / radiator.qmp;
      const scale = radiator.ratio / (re * re + im * im);
      ventRe = re * scale;
      ventIm = -im * scale;
    }
    const sumRe = yaRe + ventRe;
    const sumIm = yaIm + ventIm - perP * perLeakage;
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
}
