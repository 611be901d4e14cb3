import type { Edit } from '../../core/finding.js';

/** A change somebody may ask for where nothing is wrong. */
export interface Refactoring {
    readonly title: string;
    readonly kind: 'rewrite' | 'extract' | 'move';
    readonly edits: readonly Edit[];
    /** Why it cannot be done here although somebody might look for it; it then has no edits. */
    readonly refusal?: string;
}
