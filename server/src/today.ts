import type { CalendarDate } from '../../language/src/vocabulary/values.js';

/** The day on the calendar of the place where the program runs. */
export const dayOf = (moment: Date): CalendarDate => ({ year: moment.getFullYear(), month: moment.getMonth() + 1, day: moment.getDate() });

/** Milliseconds to the next midnight of that place; a night in which the clocks change may be an hour off, which the next edit mends. */
export const untilMidnight = (moment: Date): number => new Date(moment.getFullYear(), moment.getMonth(), moment.getDate() + 1).getTime() - moment.getTime();

/** A day as `2027-01-31`; nothing for one that is not written so or not in the calendar. */
export function readDay(text: string): CalendarDate | undefined {
    const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
    if (!found) return undefined;
    const [year, month, day] = found.slice(1).map(Number) as [number, number, number];
    const moment = new Date(Date.UTC(year, month - 1, day));
    return moment.getUTCFullYear() === year && moment.getUTCMonth() === month - 1 && moment.getUTCDate() === day ? { year, month, day } : undefined;
}
