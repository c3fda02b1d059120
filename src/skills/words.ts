import { dayInWords, isDue } from './day.ts';
import { IN_A_ROW, type Standing } from './standing.ts';

/** How a skill stands, in words, at a time in milliseconds since 1970. */
export function standingWords(standing: Standing, now: number): string {
  switch (standing.is) {
    case 'not-begun':
      return 'not begun';
    case 'under-way':
      return `under way: ${standing.inARow} of ${IN_A_ROW} in a row`;
    case 'known': {
      const missed = standing.lastWent === 'failed' ? 'missed when last reviewed, ' : '';
      return `known; ${missed}${dueWords(standing.schedule.due, now)}`;
    }
  }
}

/** "due for review today", "due for review since 3 December", "review on 9 December". */
export function dueWords(due: number, now: number): string {
  if (!isDue(due, now)) return `review on ${dayInWords(due, now)}`;
  const isToday = new Date(due).toDateString() === new Date(now).toDateString();
  return `due for review ${isToday ? 'today' : `since ${dayInWords(due, now)}`}`;
}

/** "about 2 minutes" */
export function minutesWords(minutes: number): string {
  return minutes === 1 ? 'about a minute' : `about ${minutes} minutes`;
}
