// Everything that can be found wrong with a database file: its pages, its words, and garments that do not agree with their history.
import type {Database} from "./database.ts";

/** Nothing when sound. */
export function checkAll(db: Database): readonly string[] {
  try {
    return look(db);
  } catch (error) {
    return [error instanceof Error ? error.message : String(error)];
  }
}

function look(db: Database): readonly string[] {
  const pages = db.all<{integrity_check: string}>("PRAGMA integrity_check").map(({integrity_check}) => integrity_check).filter((said) => said !== "ok");
  if (pages.length > 0) return pages;
  const gaps = db.all<{id: string}>(`
    SELECT garment.id FROM garment LEFT JOIN (SELECT id, count(*) AS steps, max(rev) AS newest, max(seq) AS last FROM step GROUP BY id) AS h USING (id)
    WHERE h.id IS NULL OR garment.rev <> h.steps OR garment.rev <> h.newest OR garment.seq <> h.last`);
  return [
    ...db.all<{table: string}>("PRAGMA foreign_key_check").map(({table}) => `a row of ${table} hangs in the air`),
    ...gaps.map(({id}) => `garment ${id} and its history differ`),
    ...db.all<{id: string}>("SELECT id FROM garment WHERE n NOT IN (SELECT rowid FROM words)").map(({id}) => `garment ${id} cannot be found by its words`),
    ...salesProblems(db),
    ...wordsProblems(db),
  ];
}

function salesProblems(db: Database): string[] {
  const written = db.all<{id: string}>(`
    SELECT sale.id FROM sale LEFT JOIN (SELECT id, count(*) AS steps, max(rev) AS newest FROM sale_step GROUP BY id) AS h USING (id) LEFT JOIN sale_step AS last ON last.id = sale.id AND last.rev = h.newest
    WHERE garment IS NULL AND (h.id IS NULL OR sale.rev <> h.steps OR sale.rev <> h.newest OR sale.body <> last.body OR sale.removed <> last.removed)`);
  // What a garment brought stands in its content; the sale beside it is worked out from there.
  const told = db.all<{id: string}>(`
    SELECT garment.id FROM garment JOIN step USING (seq) LEFT JOIN sale ON sale.id = garment.id AND sale.removed = 0 AND sale.rev = garment.rev
    WHERE garment.standing = 'sold' AND garment.removed = 0 AND json_extract(content, '$.money.sold') IS NOT NULL AND (sale.id IS NULL OR sale.cents <> json_extract(content, '$.money.sold.price.cents'))`);
  const unsold = db.all<{id: string}>("SELECT sale.id FROM sale LEFT JOIN garment ON garment.id = sale.garment WHERE sale.garment IS NOT NULL AND sale.removed = 0 AND (garment.id IS NULL OR garment.removed = 1 OR garment.standing <> 'sold')");
  return [...written.map(({id}) => `sale ${id} and its history differ`), ...[...told, ...unsold].map(({id}) => `garment ${id} and its sale differ`)];
}

// Source: sqlite.org/fts5.html, 6.4, the integrity-check command.
function wordsProblems(db: Database): string[] {
  try {
    db.run("INSERT INTO words (words) VALUES ('integrity-check')");
    return [];
  } catch (error) {
    return [`the index of words is damaged: ${error instanceof Error ? error.message : String(error)}`];
  }
}
