// A report on how a child is getting on, in words, as plain data.
import type { PaperName } from '../page/index.ts';
import type { CourseChart } from './growth-chart.ts';
import type { CourseLabels } from './report-chart.ts';

/** All that a report says; nothing else is printed. */
export interface Report {
  readonly paper: PaperName;
  /** BCP 47 tag of its words, such as `en`. */
  readonly language: string;
  readonly title: string;
  readonly opening: readonly string[];
  readonly skills: readonly ReportSkill[];
  /** Pairs, what is worth a look: in order, those without anything left out. */
  readonly parts: readonly ReportPart[];
  /** The newest first. */
  readonly notes?: ReportNotes;
  /** What the report is and is not. */
  readonly care: ReportPart;
  readonly remarks: ReportRemarks;
  /** Stands at the foot of each page. */
  readonly foot: string;
  /** What of several pages each is, in order, such as `1 of 2`. */
  readonly pages: readonly string[];
  /** Says what a line to write on stands for, where letters are missing in the font. */
  readonly lacking: string;
}

export interface ReportSkill {
  readonly name: string;
  readonly about: string;
  readonly lines: readonly string[];
  readonly chart?: ReportChart;
}

export interface ReportChart extends CourseLabels {
  readonly course: CourseChart;
}

export interface ReportPart {
  readonly heading: string;
  readonly paragraphs: readonly string[];
  /** Short ones in two columns, the most telling first. */
  readonly rows?: ReportItems;
}

/** As many of these as two pages have room for. */
export interface ReportItems {
  readonly items: readonly string[];
  /** Said where there is no room for all. */
  readonly more: string;
}

export interface ReportNotes extends ReportItems {
  readonly heading: string;
}

export interface ReportRemarks {
  readonly heading: string;
  /** What is to be written at the end, such as the date. */
  readonly fields: readonly string[];
}
