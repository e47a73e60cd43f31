// What was typed in the book editor and not yet saved, kept through a reload or a crash.

const key = (book: string) => `ticking.book.${book}`;

/** @param book  id of the book, or "new" */
export function keptText(book: string): string | null {
  return localStorage.getItem(key(book));
}

/** @returns false when the browser has no room for it */
export function keepText(book: string, yaml: string): boolean {
  try {
    localStorage.setItem(key(book), yaml);
    return true;
  } catch {
    return false;
  }
}

export function dropText(book: string): void {
  localStorage.removeItem(key(book));
}
