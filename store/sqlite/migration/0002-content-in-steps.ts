// The second shape: contents stand in the history alone, so that rows of garments are short and read fast; filters and orders have indexes of their own.

export const contentInSteps = `
ALTER TABLE garment DROP COLUMN content;
DROP INDEX garment_place;
DROP INDEX garment_maker;
DROP INDEX garment_type;
CREATE INDEX garment_by_number ON garment (removed, number COLLATE NOCASE);
CREATE INDEX garment_by_place ON garment (removed, place COLLATE NOCASE);
CREATE INDEX garment_by_date ON garment (removed, best);
CREATE INDEX garment_by_asked ON garment (removed, asked);
CREATE INDEX garment_by_sureness ON garment (removed, probability);
CREATE INDEX garment_place ON garment (removed, place);
CREATE INDEX garment_maker ON garment (removed, maker);
CREATE INDEX garment_type ON garment (removed, type);
`;
