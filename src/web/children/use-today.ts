// The day in the calendar of this place, also where the app stays open over midnight.
import { useEffect, useState } from 'react';
import type { Day } from '../../records/index.ts';
import { today } from './today.ts';

/** Looked at again whenever the page comes back into view. */
export function useToday(): Day {
  const [day, setDay] = useState(today);
  useEffect(() => {
    const look = () => setDay(today());
    document.addEventListener('visibilitychange', look);
    window.addEventListener('focus', look);
    return () => {
      document.removeEventListener('visibilitychange', look);
      window.removeEventListener('focus', look);
    };
  }, []);
  return day;
}
