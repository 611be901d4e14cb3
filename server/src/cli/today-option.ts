import type { CalendarDate } from '../../../language/src/vocabulary/values.js';
import { dayOf, readDay } from '../today.js';
import type { OptionDefinition, ParsedArguments } from './arguments.js';
import type { Console } from './console.js';
import { usageFailure } from './exit-codes.js';
import { shown } from './files.js';

export const todayOption: OptionDefinition = { name: 'today', value: 'DAY', doc: 'Day that counts for waivers with an end, such as 2027-01-31. Default: the day here. For runs that have to give the same answer later.' };

export function todayOf(args: Pick<ParsedArguments, 'value'>, { now }: Pick<Console, 'now'>): CalendarDate {
    const written = args.value('today');
    if (written === undefined) return dayOf(now());
    const day = readDay(written);
    if (!day) throw usageFailure(`--today wants a day of the calendar such as 2027-01-31, not ${shown(written)}.`);
    return day;
}
