// The sizes in which a photo is shown, and the limits on what is taken.

/** Longest side in pixels. */
export const shownSizes = {small: 320, shown: 1600} as const;
export type ShownSize = keyof typeof shownSizes;

/** 60 MB: more than any phone's photo. Source: own choice. */
export const mostPhotoBytes = 60_000_000;
/** A picture that unpacks to more fills the memory of a small machine. Source: own choice. */
export const mostPixels = 200_000_000;
