// Whether the browser keeps what is stored until a person deletes it, or may throw it away when space runs short.

/** `kept`: until a person deletes it; `may-go`: the browser may delete it; `unknown`: it does not say. */
export type Keeping = 'kept' | 'may-go' | 'unknown';

/** How things stand, without asking anyone. */
export function keepingNow(): Promise<Keeping> {
  return answered((storage) => storage.persisted());
}

/** Asks the browser to keep the entries; some browsers ask the person, so call it when there is something to keep. */
export function askToKeep(): Promise<Keeping> {
  return answered(async (storage) => (await storage.persisted()) || (await storage.persist()));
}

async function answered(ask: (storage: StorageManager) => Promise<boolean>): Promise<Keeping> {
  // Absent where the page came over plain http from another machine.
  if (!('storage' in navigator)) return 'unknown';
  try {
    return (await ask(navigator.storage)) ? 'kept' : 'may-go';
  } catch {
    return 'unknown';
  }
}
