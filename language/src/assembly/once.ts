/** Works something out when it is first asked for, and keeps it. */
export function once<T>(make: () => T): () => T {
    let kept: { readonly value: T } | undefined;
    return () => (kept ??= { value: make() }).value;
}
