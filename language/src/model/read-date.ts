import type * as ast from '../syntax/generated/ast.js';
import type { CalendarDate } from '../vocabulary/values.js';
import type { Reading } from './reading.js';

/** Reads a date; a day that is not in the calendar is reported. */
export function readDate(term: ast.DateLiteral, reading: Reading): CalendarDate | undefined {
    const [year = 0, month = 0, day = 0] = term.text.split('-').map(Number);
    const lastDay = month === 2 ? (year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
    if (month < 1 || month > 12 || day < 1 || day > lastDay) {
        reading.report('date-impossible', term, `${term.text} is no day of the calendar. A date is year-month-day, such as 2027-03-01.`);
        return undefined;
    }
    return { year, month, day };
}
