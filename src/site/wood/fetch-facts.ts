/**
 * The facts of a wood, for the framework, which waits for them before it draws the page as it waits for any part of one.
 *
 * @param address of the file
 * @throws Error that stands for a part of a page that did not arrive
 */
export async function fetchFacts(address: string): Promise<{ default: unknown }> {
  const missing = (why: string) => Object.assign(new Error(`${address}: ${why}`), { name: 'ChunkLoadError' });
  const answer = await fetch(address).catch((error: unknown) => {
    throw missing(String(error));
  });
  if (!answer.ok) throw missing(`the host answered ${answer.status}`);
  return { default: await answer.json() };
}
