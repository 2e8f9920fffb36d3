// What is asked of a worker of `samewise year`, and what it answers.
import type { ActivityId } from '../../activities/index.ts';
import type { OwnPicture } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { PageChoice, PrintStyle } from '../../page/index.ts';
import type { BookPages } from '../../plan/index.ts';
import type { Child, Day, ResultInView, Why } from '../../records/index.ts';
import type { SheetChild } from '../../sheets/index.ts';

export const FILE_KINDS = ['pdf', 'json'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

/** A child with what is recorded of it. */
export interface YearChild {
  readonly onSheet: SheetChild;
  readonly child: Child;
  readonly results: readonly ResultInView[];
  /** The step that an adult says it is at; absent: none was said. */
  readonly step?: number;
}

/** What holds for the packs of all children. */
export interface YearJob {
  readonly folder: string;
  readonly from: Day;
  readonly weeks: number;
  readonly sheets: number;
  readonly page: PageChoice;
  readonly print: PrintStyle['print'];
  readonly language: Language;
  readonly answers: boolean;
  readonly adultPage: boolean;
  readonly single: boolean;
  /** What the 50 mm line measured, in mm; absent: pages are printed as they are. */
  readonly measuredMm?: number;
  readonly files: readonly FileKind[];
  readonly anew: boolean;
}

/** All that a worker is given when it starts. */
export interface WorkerStart {
  readonly job: YearJob;
  /** The family's own pictures, which recorded sheets may be about. */
  readonly pictures: readonly OwnPicture[];
  /** Every name that is printed, so that all workers have the same letters. */
  readonly names: string;
}

export interface PlannedWeek {
  /** 1 upward. */
  readonly week: number;
  readonly sheets: readonly { readonly day: Day; readonly code: string; readonly why: Why }[];
}

/**
 * A unit of work: what stands in a child's folder; what plans will ask of an activity; the plan of a child's year; or the
 * pack of one of its weeks.
 */
export type Ask =
  | { readonly kind: 'look'; readonly child: YearChild }
  | {
      readonly kind: 'measure';
      readonly activity: ActivityId;
      readonly children: readonly YearChild[];
    }
  /** `pages`: what was measured for all, told to each worker once. */
  | { readonly kind: 'plan'; readonly child: YearChild; readonly pages?: readonly BookPages[] }
  | { readonly kind: 'week'; readonly onSheet: SheetChild; readonly planned: PlannedWeek };

export type Answer =
  /** Weeks whose files are not all there; `changed`: those of which one is not as it was made, and that stay as they are. */
  | {
      readonly kind: 'found';
      readonly toMake: readonly PlannedWeek[];
      readonly changed: readonly number[];
    }
  /** What stands there is of another making, and stays. */
  | { readonly kind: 'otherwise' }
  | { readonly kind: 'to-plan' }
  | { readonly kind: 'measured'; readonly pages: BookPages }
  | { readonly kind: 'made' }
  | { readonly kind: 'failed'; readonly reason: string };
