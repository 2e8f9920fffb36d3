// English names of the letters of other scripts, in Latin letters, since the font of the page has no others.
import { SCRIPTS, type ScriptPool } from './script-letters.ts';

const CYRILLIC =
  'a,be,ve,ge,de,ye,yo,zhe,ze,i,short i,ka,el,em,en,o,pe,er,es,te,u,ef,kha,tse,che,sha,shcha,hard sign,yery,soft sign,e,yu,ya';
const GREEK =
  'alpha,beta,gamma,delta,epsilon,zeta,eta,theta,iota,kappa,lambda,mu,nu,xi,omicron,pi,rho,sigma,tau,upsilon,phi,chi,psi,omega';

/** What stands before the name, and the names in the order of the pool, mostly as in the Unicode charts. */
const NAMES: Readonly<Record<ScriptPool, readonly [before: string, names: string]>> = {
  'cyrillic-capitals': ['Cyrillic capital', CYRILLIC],
  'cyrillic-small': ['Cyrillic small', CYRILLIC],
  'greek-capitals': ['Greek capital', GREEK],
  'greek-small': ['Greek small', GREEK],
  'devanagari-letters': [
    'Devanagari letter',
    'a,aa,i,ii,u,uu,e,ai,o,au,ka,kha,ga,gha,nga,ca,cha,ja,jha,nya,tta,ttha,dda,ddha,nna,ta,tha,da,dha,na,pa,pha,ba,bha,ma,ya,ra,la,va,sha,ssa,sa,ha',
  ],
  'arabic-letters': [
    'Arabic letter',
    'alef,beh,teh,theh,jeem,hah,khah,dal,thal,reh,zain,seen,sheen,sad,dad,tah,zah,ain,ghain,feh,qaf,kaf,lam,meem,noon,heh,waw,yeh',
  ],
};

const WORDS: ReadonlyMap<string, string> = new Map(
  (Object.keys(NAMES) as ScriptPool[]).flatMap((pool) => {
    const [before, names] = NAMES[pool];
    const words = names.split(',');
    return [...SCRIPTS[pool]].map((character, index) => [character, `${before} ${words[index]}`]);
  }),
);

/** Such as "Cyrillic capital zhe", "Arabic letter beh"; none for a character of no pool. */
export function scriptLetterWord(character: string): string | undefined {
  return WORDS.get(character);
}
