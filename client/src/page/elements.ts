/** Makes elements. Text goes in as text: nothing a job says can become markup. */

export interface ElementParts {
    readonly class?: string;
    readonly text?: string;
    readonly attributes?: Readonly<Record<string, string>>;
    readonly children?: readonly Node[];
}

export function element<Name extends keyof HTMLElementTagNameMap>(name: Name, parts: ElementParts = {}): HTMLElementTagNameMap[Name] {
    const made = document.createElement(name);
    if (parts.class !== undefined) made.className = parts.class;
    if (parts.text !== undefined) made.textContent = parts.text;
    for (const [attribute, value] of Object.entries(parts.attributes ?? {})) made.setAttribute(attribute, value);
    made.append(...(parts.children ?? []));
    return made;
}

/** A button that looks and speaks like the editor's own. */
export function button(text: string, onPress: () => void, parts: ElementParts = {}): HTMLButtonElement {
    const made = element('button', { ...parts, text, attributes: { type: 'button', ...parts.attributes } });
    made.addEventListener('click', onPress);
    return made;
}

/**
 * A list of sentences that can be folded away.
 * @param state whether it stands open, and what to do when the person changes that.
 */
export function foldingList(
    title: string, lines: readonly string[], look: string, state: { readonly open: boolean; readonly onToggle: (open: boolean) => void },
): HTMLDetailsElement {
    const made = element('details', {
        class: look,
        children: [
            element('summary', { children: [element('h2', { text: title })] }),
            element('ul', { children: lines.map(line => element('li', { text: line })) }),
        ],
    });
    made.open = state.open;
    made.addEventListener('toggle', () => state.onToggle(made.open));
    return made;
}
