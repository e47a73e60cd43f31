// The text that a new book begins with, and a copy under another name.

export const newBook = `book: my-maker
title: A maker of mine
edition: 1
kind: maker
covers: {from: 1950-01, until: 1990-12}

sources:
  rack: {kind: own rack, title: my own rack, garments: 0}

places:
  zip: {name: zip, look: Look at the pull and the teeth., effort: 1}

marks:
  zip-kind:
    kind: choice
    name: zip
    place: zip
    source: {ref: rack, how: inferred}
    values:
      brass:
        name: brass teeth
        window: {ends: [1975-01, 1980-01]}
      nylon:
        name: nylon teeth
        window: {begins: [1974-01, 1978-01]}
`;

/** The text with another id, its first edition. */
export function renamed(yaml: string, id: string): string {
  return yaml.replace(/^book:.*$/m, `book: ${id}`).replace(/^edition:.*$/m, "edition: 1");
}
