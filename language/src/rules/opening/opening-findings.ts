import { spoken } from '../../core/show.js';
import type { Finding } from '../../core/finding.js';
import type { Span } from '../../core/span.js';
import type { AssembledDoor, AssembledWindow } from '../../assembly/openings.js';
import type { Thing } from '../../engines/fittings/things.js';
import type { Block, Given } from '../../model/block.js';
import type { Place } from '../../vocabulary/values.js';
import type { RuleInput } from '../rule.js';

/** A door or window with its word, in the order doors, windows. */
export type OpeningCase =
    | (AssembledDoor & { readonly word: 'door' })
    | (AssembledWindow & { readonly word: 'window' });

export const openingsOf = ({ results: { doors, windows } }: RuleInput): readonly OpeningCase[] =>
    [...doors.map(door => ({ ...door, word: 'door' as const })), ...windows.map(window => ({ ...window, word: 'window' as const }))];

/** The place of a door or window along its wall, to its near edge or to its middle. */
export function placeFact({ values: { from, centre } }: Block<'door'> | Block<'window'>): { readonly given: Given<Place>; readonly isCentre: boolean } | undefined {
    if (from) return { given: from, isCentre: false };
    return centre && { given: centre, isCentre: true };
}

/** A place as it is written in the value of `from` or `centre`. */
export const placeText = (wall: string, distance: string, isCentre: boolean): string => `${isCentre ? 'from ' : ''}${wall} ${distance}`;

/** Where the model of a door or window is named: what the catalogue says is mended there, or another model is chosen here. */
export const modelSpan = ({ block }: OpeningCase | AssembledDoor | AssembledWindow): Span => block.values.model?.span ?? block.head;

/** The fact of the catalogue that is at fault, or the model itself where it is not written. */
export const inCatalogue = (model: Block, fact: Given<unknown> | undefined, message: string): NonNullable<Finding['related']> => [{ at: fact?.fact ?? model.head, message }];

/** `bench upper`, `the thermometer`, `upper back rest`. */
export function showThing({ kind, name }: Thing): string {
    const word = spoken(kind);
    if (name === kind) return `the ${word}`;
    return kind === 'rest' || kind === 'trim' || kind === 'guard' ? name : `${word} ${name}`;
}
