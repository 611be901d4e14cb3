/** The review page: its numbered places become links back to the text, and it stays where the reader was when it is made again. */
interface Kept { readonly uri?: string; readonly job?: string; readonly scroll?: number }
declare function acquireVsCodeApi(): { postMessage(message: unknown): void; getState(): Kept | undefined; setState(state: Kept): void };

const editor = acquireVsCodeApi();
const subject = JSON.parse(document.body.dataset['subject'] ?? '{}') as Kept;
const before = editor.getState();
const keep = (scroll: number): void => { editor.setState({ ...subject, scroll }); };

for (const place of document.querySelectorAll<HTMLElement>('[data-place]')) {
    place.setAttribute('role', 'link');
    place.tabIndex = 0;
    const go = (moveFocus: boolean): void => { editor.postMessage({ type: 'goTo', place: Number(place.dataset['place']), moveFocus }); };
    place.addEventListener('click', () => { go(false); });
    place.addEventListener('keydown', event => { if (event.key === 'Enter') { event.preventDefault(); go(true); } });
}
const scroll = before?.uri === subject.uri && before?.job === subject.job ? before?.scroll ?? 0 : 0;
window.scrollTo(0, scroll);
keep(scroll);
window.addEventListener('scroll', () => { keep(window.scrollY); }, { passive: true });
