import { editDistance } from '../core/nearest.js';
import { showList } from '../core/show.js';

/** More names than these are no help to read. */
const mostNames = 8;
const fewNames = 5;

/**
 * Names that may be meant, in one sentence: all of them while they are few, else the ones spelt most alike and how many there are.
 * @param where what holds them, such as `in this job`; nothing when that is plain
 */
export function listNames(word: string, names: readonly string[], where = ''): string {
    const place = where === '' ? '' : ` ${where}`;
    if (names.length <= mostNames) return `There ${names.length === 1 ? 'is' : 'are'}${place} ${showList(names)}.`;
    const cost = (name: string): number => editDistance(word.toLowerCase(), name.toLowerCase());
    const alike = names.map(name => ({ name, cost: cost(name) })).sort((a, b) => a.cost - b.cost).slice(0, fewNames).map(({ name }) => name);
    return `There are ${names.length}${place}; spelt most alike are ${showList(alike)}.`;
}
