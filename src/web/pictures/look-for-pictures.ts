// Looks for own pictures before the first page where some were kept here; nobody else waits or gets a database.
import { recall } from '../children/remembered.ts';

export async function lookForPictures(): Promise<void> {
  if (recall('pictures') === undefined) return;
  const { watchPictures } = await import('./watch-pictures.ts');
  await watchPictures();
}
