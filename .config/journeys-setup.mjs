/** Builds and serves once for all journeys, and tells them the address. */
import { ensureBuilt, serveApplication } from './application.mjs';

export default async function setup() {
  if (process.env['OCTAVO_ADDRESS']) return undefined;
  await ensureBuilt();
  const { address, close } = await serveApplication();
  process.env['OCTAVO_ADDRESS'] = address;
  return close;
}
