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
  allison1974: {
    title: 'R. F. Allison, “The Influence of Room Boundaries on Loudspeaker Power Output”, J. Audio Eng. Soc. 22, 1974',
  },
  morse1948: { title: 'P. M. Morse, Vibration and Sound, 2nd edition, 1948' },
  hyndman1996: {
    title: 'R. J. Hyndman, Y. Fan, “Sample Quantiles in Statistical Packages”, The American Statistician 50, 1996',
  },
} as const satisfies Record<string, { title: string }>;

export type SourceKey = keyof typeof sources;
