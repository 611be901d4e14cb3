/** The revision after one: `C` after `B`, `AA` after `Z`, `3` after `2`; nothing after one of another form. */
export function nextRevision(revision: string): string | undefined {
    if (/^\d{1,9}$/.test(revision)) return String(Number(revision) + 1).padStart(revision.length, '0');
    if (!/^[A-Z]{1,3}$/.test(revision)) return undefined;
    const kept = revision.replace(/Z+$/, '');
    const reset = 'A'.repeat(revision.length - kept.length);
    return kept === '' ? `A${reset}` : `${kept.slice(0, -1)}${String.fromCharCode(kept.charCodeAt(kept.length - 1) + 1)}${reset}`;
}
