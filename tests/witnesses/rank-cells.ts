/** Three candidates, two criteria, and a step of each. */
export const rankCells = {
  A1: 'M-1',
  A2: 'M-2',
  A3: 'M-3',
  B1: '0.2',
  B2: '0.9',
  B3: '1.4',
  C1: '1.2',
  C2: '0.8',
  C3: '0.1',
  D1: '0.5',
  E1: '0.5',
};
