/** The bibliography. Definitions cite by key and say where inside; `own` and `practice` are honest about having none. */
export const sources = {
  own: { title: 'Derived here from first principles; checked in the tests against an independent computation' },
  practice: { title: 'Common practice, no source' },
  thiele1971: {
    title: 'A. N. Thiele, “Loudspeakers in Vented Boxes”, J. Audio Eng. Soc. 19, 1971 (first printed 1961)',
  },
  small1972direct: { title: 'R. H. Small, “Direct-Radiator Loudspeaker System Analysis”, J. Audio Eng. Soc. 20, 1972' },
  small1972closed: { title: 'R. H. Small, “Closed-Box Loudspeaker Systems”, J. Audio Eng. Soc. 20, 1972' },
  small1973vented: { title: 'R. H. Small, “Vented-Box Loudspeaker Systems”, J. Audio Eng. Soc. 21, 1973' },
  small1974radiator: { title: 'R. H. Small, “Passive-Radiator Loudspeaker Systems”, J. Audio Eng. Soc. 22, 1974' },
  abramowitz1964: { title: 'M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964' },
  linkwitz1976: {
    title: 'S. H. Linkwitz, “Active Crossover Networks for Noncoincident Drivers”, J. Audio Eng. Soc. 24, 1976',
  },
  iec60063: { title: 'IEC 60063, Preferred number series for resistors and capacitors' },
  iec60268_5: { title: 'IEC 60268-5, Sound system equipment: Loudspeakers' },
  olson1969: { title: 'H. F. Olson, “Direct Radiator Loudspeaker Enclosures”, J. Audio Eng. Soc. 17, 1969' },
  beranek1954: { title: 'L. L. Beranek, Acoustics, 1954' },
  levine1948: {
    title: 'H. Levine, J. Schwinger, “On the Radiation of Sound from an Unflanged Circular Pipe”, Phys. Rev. 73, 1948',
  },
  leissa1969: { title: 'A. W. Leissa, Vibration of Plates, NASA SP-160, 1969' },
  iec62368: {
    title: 'IEC 62368-1, Audio/video, information and communication technology equipment: Safety requirements',
  },
  cta2034: { title: 'ANSI/CTA-2034-A, Standard Method of Measurement for In-Home Loudspeakers, 2015' },
  miyamoto1962: {
    title:
      'K. Miyamoto, E. Wolf, “Generalization of the Maggi–Rubinowicz Theory of the Boundary Diffraction Wave”, J. Opt. Soc. Am. 52, 615–622, 1962 (abstract read)',
  },
  allison1974: {
    title: 'R. F. Allison, “The Influence of Room Boundaries on Loudspeaker Power Output”, J. Audio Eng. Soc. 22, 1974',
  },
  savage1951: { title: 'L. J. Savage, “The Theory of Statistical Decision”, J. Am. Stat. Assoc. 46, 1951' },
  morse1948: { title: 'P. M. Morse, Vibration and Sound, 2nd edition, 1948' },
  hyndman1996: {
    title: 'R. J. Hyndman, Y. Fan, “Sample Quantiles in Statistical Packages”, The American Statistician 50, 1996',
  },
  benjamin1994: {
    title: 'E. Benjamin, “Audio Power Amplifiers for Loudspeaker Loads”, J. Audio Eng. Soc. 42, 1994 (from memory)',
  },
  leach2002: {
    title:
      'W. M. Leach, “Loudspeaker Voice-Coil Inductance Losses: Circuit Models, Parameter Estimation, and Effect on Frequency Response”, J. Audio Eng. Soc. 50, 2002',
  },
  wright1990: {
    title:
      'J. R. Wright, “An Empirical Model for Loudspeaker Motor Impedance”, J. Audio Eng. Soc. 38, 1990 (from memory)',
  },
  wheeler1928: {
    title: 'H. A. Wheeler, “Simple Inductance Formulas for Radio Coils”, Proc. I.R.E. 16, 1928 (as quoted)',
  },
  grover1946: { title: 'F. W. Grover, Inductance Calculations, 1946 (from memory)' },
  astmB258: { title: 'ASTM B258, Standard Nominal Diameters of AWG Sizes of Solid Round Wires (as quoted)' },
  iec60028: { title: 'IEC 60028, International Standard of Resistance for Copper' },
  bode1945: { title: 'H. W. Bode, Network Analysis and Feedback Amplifier Design, 1945' },
  keele1974: {
    title:
      'D. B. Keele, “Low-Frequency Loudspeaker Assessment by Nearfield Sound-Pressure Measurement”, J. Audio Eng. Soc. 22, 1974 (from memory)',
  },
  levenberg: {
    title:
      'K. Levenberg, Quart. Appl. Math. 2, 1944, and D. W. Marquardt, J. Soc. Indust. Appl. Math. 11, 1963: least squares of nonlinear parameters',
  },
  niosh1998: {
    title: 'NIOSH Publication 98-126, Criteria for a Recommended Standard: Occupational Noise Exposure, 1998',
  },
  osha1910: { title: 'US 29 CFR 1910.95, Occupational noise exposure' },
  ituH870: { title: 'ITU-T H.870, Guidelines for safe listening devices (with the WHO), 2018' },
} as const satisfies Record<string, { title: string }>;

export type SourceKey = keyof typeof sources;
