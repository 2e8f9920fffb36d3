// The figures of a task as buttons over its picture: what is wrong is noted, what is right says so of the task.
import type { CSSProperties } from 'react';
import { Button } from 'react-aria-components/Button';
import { Header } from 'react-aria-components/Header';
import { Menu, MenuItem, MenuSection, MenuTrigger } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { Toolbar } from 'react-aria-components/Toolbar';
import type { TapTask } from '../planning/cards.ts';
import { styleOf } from '../table/target-style.ts';
import { notedIn, type ResultDraft, tapRight, tapWrong } from './result-draft.ts';
import { markNames } from './tap-names.ts';
import type { Box } from './targets.ts';
import { words } from './words.ts';

/** One thing to tap. */
export interface Target {
  readonly mark: number;
  /** In mm on the page. */
  readonly box: Box;
}

export interface TaskTargetsProps {
  /** From 0. */
  readonly task: number;
  readonly taps: TapTask;
  readonly targets: readonly Target[];
  readonly draft: ResultDraft;
  readonly onTap: (part: Partial<ResultDraft>) => void;
}

/** One stop of the Tab key for each task; the arrow keys go from figure to figure. */
export function TaskTargets({ task, taps, targets, draft, onTap }: TaskTargetsProps) {
  const names = markNames(taps);
  const noted = notedIn(draft, task);
  return (
    <Toolbar className="task-targets" aria-label={words.task(task + 1)}>
      {targets.map(({ mark, box }) => {
        const choice = taps.choices.find((each) => each.mark === mark);
        const about = taps.about.find((each) => each.mark === mark);
        const figure = {
          name: names.get(mark) ?? '',
          task,
          style: styleOf(box),
          noted: noted.find(({ place }) => place === mark)?.label,
        };
        const tap = (label: string) => onTap(tapWrong(draft, task, { place: mark, label }));
        if (about) return <About key={mark} {...figure} about={about} onChoose={tap} />;
        if (choice?.isRight) {
          return <Right key={mark} {...figure} onTap={() => onTap(tapRight(draft, task))} />;
        }
        return choice && <Wrong key={mark} {...figure} onTap={() => tap(choice.name)} />;
      })}
    </Toolbar>
  );
}

interface FigureProps {
  readonly task: number;
  readonly name: string;
  readonly style: CSSProperties;
  /** What was noted at it. */
  readonly noted: string | undefined;
}

function Right({ task, name, style, onTap }: FigureProps & { readonly onTap: () => void }) {
  const label = words.figureOf(task + 1, words.rightFigure(name));
  return <Button className="target" style={style} aria-label={label} onPress={onTap} />;
}

function Wrong({ task, name, style, noted, onTap }: FigureProps & { readonly onTap: () => void }) {
  return (
    <ToggleButton
      className="target"
      style={style}
      aria-label={words.figureOf(task + 1, name)}
      isSelected={noted !== undefined}
      onChange={onTap}
    />
  );
}

interface AboutProps extends FigureProps {
  readonly about: TapTask['about'][number];
  readonly onChoose: (label: string) => void;
}

/** What the child did with a figure: that is asked for by its name. */
function About({ task, name, style, noted, about, onChoose }: AboutProps) {
  const figure = noted === undefined ? name : words.notedFigure(name, noted);
  return (
    <MenuTrigger>
      <Button
        className="target"
        style={style}
        aria-label={words.figureOf(task + 1, figure)}
        data-selected={noted === undefined ? undefined : 'true'}
      />
      <Popover className="drawer" placement="bottom">
        <Menu
          className="list"
          selectionMode="single"
          selectedKeys={noted === undefined ? [] : [noted]}
          onAction={(label) => onChoose(String(label))}
        >
          <MenuSection>
            <Header className="list-head">
              {about.name === '' ? words.chosenInsteadWhat : words.takenForWhat}
            </Header>
            {[...new Set(about.wrong)].map((label) => (
              <MenuItem key={label} id={label} className="item">
                {label}
              </MenuItem>
            ))}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
