import { expect } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { Person } from './person.ts';

type Options = Parameters<typeof openSession>[0];
export type Session = Awaited<ReturnType<typeof openSession>>;

/** A browser of its own with the page in it, and the person at it. */
export interface Visit {
  readonly session: Session;
  readonly person: Person;
}

/** Opens the page and waits until its numbers are there. */
export async function visit(options?: Options): Promise<Visit> {
  const session = await openSession(options);
  try {
    const person = new Person(session.page);
    await person.settled();
    return { session, person };
  } catch (error) {
    await session.close();
    throw error;
  }
}

/** Closes the page, which must have had nothing to report. */
export async function leave({ problems, close }: Session): Promise<void> {
  await close();
  expect(problems).toEqual([]);
}

/** A visit that ends with what is done in it. */
export async function during<Found>(options: Options, act: (visit: Visit) => Promise<Found>): Promise<Found> {
  const { session, person } = await visit(options);
  try {
    const found = await act({ session, person });
    expect(session.problems).toEqual([]);
    return found;
  } finally {
    await session.close();
  }
}
