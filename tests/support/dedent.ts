/** Takes the common indentation and the outer blank lines off a template literal. */
export function dedent(text: string): string {
    const lines = text.replace(/^\n/, '').replace(/\n\s*$/, '').split('\n');
    const indent = Math.min(...lines.filter(line => line.trim()).map(line => line.length - line.trimStart().length));
    return lines.map(line => line.slice(indent)).join('\n');
}
