import { driverParameters } from '../../driver/parameters.ts';
import type { Driver } from '../driver.ts';
import { field, type ReadableField } from './field.ts';

export const ofDriver: readonly ReadableField<Driver>[] = [
  field('name', 'Name', 'text', (driver) => driver.name),
  ...driverParameters.map((each) =>
    field<Driver>(each.field, each.summary, each.quantity, (driver) => driver[each.field], each.symbol),
  ),
  field('levelbasis', 'What the level was printed for', 'text', (driver) => driver.levelBasis, 'Level basis'),
];
