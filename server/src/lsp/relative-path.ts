import { UriUtils, type URI } from 'langium';

/** How a `use` in one file writes the path of another. */
export const relativePath = (from: URI, to: URI): string => UriUtils.relative(UriUtils.dirname(from), to);
