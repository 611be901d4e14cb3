/** What the extension tells a page of tables. Types only: the page trusts its own extension and carries no checker. */
import type { ComparisonSubject, Subject, TablesDocument } from './tables-document.js';

/**
 * - `fresh` shows the document as it stands; `edited` is waiting for a save; `stale` is the last list that could be
 *   made; `working` is on the way; `failed` has nothing to show or could not refresh;
 *   `refused` cannot be made as things are, which is no failure: the message says what is missing.
 */
export type PageCondition = 'fresh' | 'edited' | 'stale' | 'working' | 'failed' | 'refused';

export type ToPage =
    | { readonly type: 'picture'; readonly number: number; readonly document: TablesDocument; readonly subject: Subject | ComparisonSubject }
    | { readonly type: 'condition'; readonly condition: PageCondition; readonly message: string }
    | { readonly type: 'said'; readonly message: string }
    | { readonly type: 'sourceSelected'; readonly picture: number; readonly rows: readonly { readonly table: string; readonly row: number }[] };
