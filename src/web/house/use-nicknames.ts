// The nicknames of the children in the records, for Make: looked for once the first page lies on the table.
import { useEffect, useState } from 'react';
import { hasRecords } from './use-house.ts';

export function useNicknames(isWanted: boolean): readonly string[] {
  const [nicknames, setNicknames] = useState<readonly string[]>([]);
  useEffect(() => {
    if (!isWanted) return;
    let isThere = true;
    const look = async () => {
      if (!(await hasRecords())) return;
      const { nicknamesNow } = await import('./nicknames-now.ts');
      const found = await nicknamesNow();
      if (isThere) setNicknames(found);
    };
    // Where the records cannot be read, a name can still be written.
    look().catch(() => setNicknames([]));
    return () => {
      isThere = false;
    };
  }, [isWanted]);
  return nicknames;
}
