// Starts the app in the page.
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import './look/index.css';
import { startMaker } from './making/maker.ts';
import { startNewer } from './offline/newer.ts';
import { lookForPictures } from './pictures/look-for-pictures.ts';
import { startPlanner } from './planning/planner.ts';
import { firstLanguage } from './speaking/first-language.ts';
import { speakIn } from './speaking/language-now.ts';

const place = document.getElementById('app');
if (!place) throw new Error('index.html › #app: expected an element to put the app in');

const app = <App maker={startMaker()} planner={startPlanner()} newer={startNewer()} />;
// Where the catalogue or the pictures cannot be fetched the app is there in English.
void Promise.allSettled([speakIn(firstLanguage()), lookForPictures()]).then(() =>
  createRoot(place).render(<StrictMode>{app}</StrictMode>),
);
