// The code with which another screen leads here, as `#record?code=CODE`; once read it leaves the address.
import { useEffect } from 'react';
import { hashOf } from '../place-names.ts';

export function addressToRecord(code: string): string {
  return `${hashOf('record')}?code=${code}`;
}

export function useCodeInAddress(onCode: (code: string) => void): void {
  useEffect(() => {
    const take = () => {
      const [place, asked] = location.hash.split('?');
      if (place !== hashOf('record') || asked === undefined) return;
      history.replaceState(null, '', hashOf('record'));
      const code = new URLSearchParams(asked).get('code');
      if (code !== null && code !== '') onCode(code);
    };
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, [onCode]);
}
