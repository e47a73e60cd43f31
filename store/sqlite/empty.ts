// Empties a rack in one step, while others may have it open. The one place that takes history away; who calls it has made a backup.
import {openFiles} from "../open.ts";
import {historyStays} from "./migration/0001-rack.ts";
import {saleHistoryStays} from "./migration/0003-sales.ts";

/**
 * Garments, sales, their history and settings go; photos, books and backups stay.
 * @param kept  settings that stay
 * @throws StoreFault when the disk is full or closed; the rack is as it was then
 */
export function emptyRack(folder: string, kept: readonly string[]): void {
  const db = openFiles(folder);
  try {
    db.write(() => {
      db.exec("DROP TRIGGER step_stays; DROP TRIGGER step_is_kept; DROP TRIGGER sale_step_stays; DROP TRIGGER sale_step_is_kept");
      // Steps go on counting where they were, by which others notice that their memory of the years is old.
      db.exec("DELETE FROM words; DELETE FROM tag; DELETE FROM step; DELETE FROM garment");
      db.exec("DELETE FROM sale_step; DELETE FROM sale; UPDATE counter SET value = (SELECT value FROM counter WHERE name = 'sales') + 1 WHERE name IN ('sales', 'sales emptied')");
      db.run("DELETE FROM setting WHERE key NOT IN (SELECT value FROM json_each(?))", JSON.stringify(kept));
      db.exec(historyStays + saleHistoryStays);
    });
  } finally {
    db.close();
  }
}
