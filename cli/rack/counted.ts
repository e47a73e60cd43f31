// A number with its word: 1 garment, 2 garments.

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
