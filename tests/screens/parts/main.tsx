// A screen for tests that stands on the ground of all screens about children, and uses each of its parts.
import { StrictMode, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { accept } from '../../../src/base/index.ts';
import type { Day, Entry } from '../../../src/records/index.ts';
import { PressButtons } from '../../../src/web/actions/press-buttons.tsx';
import { ChildChooser } from '../../../src/web/children/child-chooser.tsx';
import Ground from '../../../src/web/children/ground.tsx';
import { RecordsMain } from '../../../src/web/children/records-main.tsx';
import { useGround } from '../../../src/web/children/use-ground.ts';
import '../../../src/web/look/index.css';
import { startPlanner } from '../../../src/web/planning/planner.ts';

/** What the address asks for: `#codes=…,…&name=…`. */
const asked = new URLSearchParams(location.hash.slice(1));
const codes = (asked.get('codes') ?? '').split(',').filter((code) => code !== '');
const name = asked.get('name') ?? '';
const planner = startPlanner();

const CHILD = '0199c7f2-8e00-7000-8000-00000000000a';

/** One invented child and a plan; that they are invented is for the ground to say. */
async function invented(day: Day) {
  const entries: readonly Entry[] = [
    { id: CHILD, at: 1, kind: 'child', child: CHILD, nickname: 'Moss' },
    { id: CHILD.replace(/.$/, 'b'), at: 2, kind: 'plan', child: CHILD, day, sheets: [] },
  ];
  return accept(entries);
}

function Parts() {
  return (
    <RecordsMain className="parts">
      {() => (
        <>
          <ChildChooser />
          <Add />
          <Sheet />
          <PressButtons what={{ codes, name }} isReady={codes.length > 0} next="pages" />
        </>
      )}
    </RecordsMain>
  );
}

function Add() {
  const { append, choose } = useGround();
  const [nickname, setNickname] = useState('');
  const add = async () => {
    const added = await append([{ kind: 'child', nickname }]);
    if (added.ok && added.value[0]) choose(added.value[0].id);
  };
  return (
    <p>
      <input
        aria-label="Nickname"
        value={nickname}
        onChange={({ target }) => setNickname(target.value)}
      />
      <button type="button" className="plain" onClick={() => void add()}>
        Add
      </button>
    </p>
  );
}

/** What the planner says of the first of the codes. */
function Sheet() {
  const [told, setTold] = useState('');
  const ask = async () => {
    const reply = await planner.ask('sheet', { code: codes[0] ?? '' });
    setTold(
      reply.ok
        ? `${reply.value.activity}, ${reply.value.tasks} tasks`
        : reply.objections.map(({ sentence }) => sentence).join(' '),
    );
  };
  return (
    <p>
      <button type="button" className="plain" onClick={() => void ask()}>
        Look
      </button>
      <output>{told}</output>
    </p>
  );
}

const place = document.getElementById('app');
if (!place) throw new Error('index.html › #app: expected an element');
createRoot(place).render(
  <StrictMode>
    <header>
      <h1>Parts of screens</h1>
    </header>
    <Ground place="parts" onTryDemo={invented}>
      <Parts />
    </Ground>
  </StrictMode>,
);
