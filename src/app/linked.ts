import { isRefusal } from '../document/command.ts';
import { carriesDocument, readLink } from '../exchange/link/link.ts';
import type { Session } from './session.ts';

/** Opens the document that the address carries, as a copy, and takes it out of the address, so that loading the page anew
 *  does not open another one. Gives what is to be told: where it came from, or why it cannot be read. */
export async function openLinked(session: Session): Promise<string | undefined> {
  const address = location.href;
  if (!carriesDocument(address)) return undefined;
  history.replaceState(history.state, '', location.pathname + location.search);
  const document = await readLink(address);
  if (isRefusal(document)) return document.refused;
  const problem = await session.adopt(document);
  return (
    problem ??
    `“${document.title}” came in a link and is now a copy of your own, kept on this device. Nothing was sent anywhere.`
  );
}
