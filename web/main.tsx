// The entry of the screens.
export {};
